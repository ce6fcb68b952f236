package org.cotyla.cli.text;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankedOption.Availability;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Reason;
import org.cotyla.explain.Ruling;
import org.cotyla.explain.Separation;
import org.cotyla.explain.WhyNot;
import org.cotyla.value.Value;

/** Writes for people why an option does not stand before another. */
public final class WhyNotAnswer {

  private final int width;
  private final Style style;

  public WhyNotAnswer(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /**
   * The answer as text.
   *
   * @param today the day on which it is read, to say when the protocol is past its review
   */
  public String write(WhyNot whyNot, LocalDate today) {
    Page page = new Page(width, style);
    Recommendation advice = whyNot.recommendation();
    KnownValues known = new KnownValues(advice);
    ReasonLines lines = new ReasonLines(page, advice.protocol(), known);
    new OpeningPart(page).write(advice, today, Optional.empty());
    String against = whyNot.against().map(other -> ", against " + other.name()).orElse("");
    boolean stands = whyNot.verdict() == WhyNot.Verdict.STANDS_BEFORE;
    page.heading((stands ? "" : "Why not ") + whyNot.option().name() + against);
    page.paragraph(2, verdict(whyNot));
    new RulingPart(page, known, lines).write(whyNot.rulings());
    separations(page, whyNot, lines);
    new PremisePart(page, advice, known).write(whyNot.premises());
    new SourcePart(page).write(reasons(whyNot));
    new IdentityPart(page).write(advice);
    return page.toString();
  }

  private static List<Reason> reasons(WhyNot whyNot) {
    return Stream.concat(
            whyNot.rulings().stream().map(Ruling::reason),
            whyNot.separations().stream().map(Separation::reason))
        .toList();
  }

  private static String verdict(WhyNot whyNot) {
    RankedOption option = whyNot.option();
    if (whyNot.against().isEmpty()) {
      return option.name() + " is the only option.";
    }
    RankedOption other = whyNot.against().get();
    String both = stands(option) + "; " + stands(other) + ". ";
    String behind = plain(whyNot.pointsBehind().abs());
    String points = behind + (behind.equals("1") ? " point" : " points");
    return both
        + switch (whyNot.verdict()) {
          case STANDS_BEFORE ->
              isOut(other)
                  ? other.name() + " is ruled out, so " + option.name() + " stands before it."
                  : "It stands before " + other.name() + lead(whyNot, points) + ".";
          case RULED_OUT -> "A ruled-out option comes after all others, whatever its points.";
          case FEWER_POINTS -> "It is " + points + " behind " + other.name() + ".";
          case ORDER_OF_OPTIONS ->
              "Both have the same points; the order of the protocol's options puts "
                  + other.name()
                  + " before it.";
        };
  }

  private static String lead(WhyNot whyNot, String points) {
    return whyNot.pointsBehind().signum() == 0
        ? ": the points are the same, and the order of the protocol's options settles it"
        : " by " + points;
  }

  private static String stands(RankedOption option) {
    String points = option.points().plain();
    String sum = points + (points.equals("1") ? " point" : " points");
    return switch (option.availability()) {
      case RULED_OUT -> option.name() + " is ruled out";
      case MAY_BE_RULED_OUT ->
          option.name()
              + " has place "
              + option.place()
              + " with "
              + sum
              + ", and may be ruled out";
      case AVAILABLE -> option.name() + " has place " + option.place() + " with " + sum;
    };
  }

  private static boolean isOut(RankedOption option) {
    return option.availability() == Availability.RULED_OUT;
  }

  private static void separations(Page page, WhyNot whyNot, ReasonLines lines) {
    if (whyNot.against().isEmpty()) {
      return;
    }
    String barred = isOut(whyNot.option()) ? ", were it not ruled out" : "";
    page.heading("What separates the two" + barred + ", weightiest first");
    for (Separation one : whyNot.separations()) {
      boolean gains = one.toAsked().signum() > 0;
      Mark sign = gains ? Mark.FOR : Mark.AGAINST;
      Mark mark = one.isRuling() ? Mark.RULED_OUT : sign;
      lines.one(
          one.reason(),
          one.isCertain() ? mark : Mark.OPEN,
          one.isCertain() && !one.isRuling() ? ReasonLines.points(one.reason()) : "",
          side(one) + one.option() + ": ");
    }
    if (whyNot.separations().isEmpty()) {
      page.paragraph(2, "No row speaks for or against either of them.");
    }
    page.paragraph(2, sum(whyNot));
  }

  private static String side(Separation one) {
    return switch (one.reason().effect()) {
      case FAVOUR -> "for ";
      case OPPOSE -> "against ";
      case RULE_OUT -> "rules out ";
    };
  }

  private static String sum(WhyNot whyNot) {
    RankedOption other = whyNot.against().orElseThrow();
    BigDecimal behind = whyNot.pointsBehind();
    String ours = plain(whyNot.option().points().now());
    String theirs = plain(other.points().now());
    String gap =
        behind.signum() == 0
            ? "the same"
            : plain(behind.abs()) + (behind.signum() > 0 ? " behind" : " ahead");
    return "Certain points: " + ours + " against " + theirs + ", " + gap + ".";
  }

  private static String plain(BigDecimal points) {
    return Value.of(points).plain();
  }
}
