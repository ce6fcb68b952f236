package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.evaluate.Points;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Why;
import org.cotyla.explore.SmallestChange;
import org.cotyla.value.Value;

/** Writes for people how an option got its place: each row, its tests, and what they rest on. */
public final class WhyAnswer {

  private final int width;
  private final Style style;

  public WhyAnswer(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /**
   * The answer as text.
   *
   * @param change what would have to be true for the option to come first, when it does not
   * @param today the day on which it is read, to say when the protocol is past its review
   */
  public String write(Why why, Optional<SmallestChange> change, LocalDate today) {
    Page page = new Page(width, style);
    Recommendation advice = why.recommendation();
    KnownValues known = new KnownValues(advice);
    new OpeningPart(page).write(advice, today, Optional.empty());
    page.heading("Why " + why.option().name() + " " + stands(why));
    ReasonLines lines = new ReasonLines(page, advice.protocol(), known);
    lines.all(why.rulings());
    lines.all(why.votes());
    lines.all(why.possibleVotes());
    if (why.reasons().isEmpty()) {
      page.paragraph(2, "No row speaks for or against it.");
    }
    sum(page, why);
    change.ifPresent(ways -> SmallestChangeAnswer.section(page, ways));
    new PremisePart(page, advice, known).write(why.premises());
    new SourcePart(page).write(why.reasons());
    new IdentityPart(page).write(advice);
    return page.toString();
  }

  private static String stands(Why why) {
    RankedOption option = why.option();
    String may =
        option.availability() == Availability.MAY_BE_RULED_OUT ? ", and may be ruled out" : "";
    if (option.availability() == Availability.RULED_OUT) {
      return "is ruled out as " + why.ranking().ranking().name();
    }
    String place =
        option.place() == 1
            ? "is the first " + why.ranking().ranking().name()
            : "is "
                + why.ranking().ranking().name()
                + " number "
                + option.place()
                + " of "
                + why.ranking().options().size();
    String certainty = option.place() == 1 && !why.ranking().firstIsCertain() ? ", so far" : "";
    return place + certainty + may;
  }

  private static void sum(Page page, Why why) {
    Points points = why.option().points();
    String now = plain(points.now());
    String certain =
        why.votes().isEmpty()
            ? "No row gives or takes points for certain: 0 points"
            : "The sum of what is certain: " + now + (now.equals("1") ? " point" : " points");
    String open =
        points.isCertain()
            ? ""
            : "; with what is open, from " + plain(points.least()) + " to " + plain(points.most());
    String barred =
        why.option().availability() == Availability.RULED_OUT
            ? ", which do not count while it is ruled out"
            : "";
    page.paragraph(2, certain + open + barred + ".");
    if (!why.addsUp()) {
      page.warning("These rows do not add up to the points shown: " + points.plain());
    }
    if (!why.option().tiedWith().isEmpty()) {
      page.paragraph(
          2,
          "A tie with "
              + Words.and(why.option().tiedWith())
              + "; the order of the protocol's options settles it.");
    }
  }

  private static String plain(java.math.BigDecimal points) {
    return Value.of(points).plain();
  }
}
