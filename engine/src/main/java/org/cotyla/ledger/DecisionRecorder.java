package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Outcome;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Reason;

/** Records what was done, and what came of it, against the recommendation that was there. */
public final class DecisionRecorder {

  private static final Place CHOICE = new Place.Whole("choice");
  private static final Place DAY = new Place.Whole("day");

  private final Ledger ledger;
  private final Collection<FormulaFunction> functions;
  private final LocalDate today;

  /**
   * @param functions what the formulas of kept workbooks may call
   * @param today the local day, after which nothing can have happened
   */
  public DecisionRecorder(Ledger ledger, Collection<FormulaFunction> functions, LocalDate today) {
    this.ledger = ledger;
    this.functions = List.copyOf(functions);
    this.today = today;
  }

  /**
   * What somebody says was done.
   *
   * @param reference the local reference of the case
   * @param recommendation the entry of the recommendation; the last of the case when absent
   * @param choices the chosen option by the name of its ranking
   * @param reason why it departs, a word of the protocol's list
   * @param because why it departs, in free words
   */
  public record Done(
      String reference,
      Optional<Long> recommendation,
      LocalDate day,
      String role,
      Map<String, String> choices,
      Optional<String> reason,
      Optional<String> because) {}

  /** What somebody says came of a decision; the last of the case when no entry is named. */
  public record CameOf(
      String reference, Optional<Long> decision, LocalDate day, String outcome, String role) {}

  /**
   * Records a decision. Whether it follows or departs is worked out, not asked.
   *
   * @throws RejectedException listing every fault of what is said
   */
  public Entry decide(Done done) {
    Issues issues = new Issues();
    common(done.reference(), done.role(), done.day(), issues);
    done.because().ifPresent(text -> Wording.text("because", text, issues));
    Entry entry = find(done.reference(), done.recommendation(), Kind.RECOMMENDATION, issues);
    Content.Recommendation advised = (Content.Recommendation) entry.content();
    if (done.day().isBefore(advised.day())) {
      issues.error(
          "L045", DAY, done.day() + " is before the recommendation, which is of " + advised.day());
    }
    Protocol protocol = protocol(advised);
    List<Choice> choices = choices(done.choices(), advised.advice(), issues);
    boolean followed = choices.stream().allMatch(choice -> choice.stood() == Choice.Stood.FIRST);
    Optional<String> reason = reason(done, protocol, followed, issues);
    Registry.throwIfAny(issues);
    Content decision =
        new Content.Decision(
            done.reference(),
            entry.sequence(),
            done.day(),
            done.role(),
            choices,
            followed,
            reason,
            done.because());
    return ledger.write(writing -> writing.append(decision));
  }

  /**
   * Records an outcome.
   *
   * @throws RejectedException listing every fault of what is said
   */
  public Entry outcome(CameOf said) {
    Issues issues = new Issues();
    common(said.reference(), said.role(), said.day(), issues);
    Entry entry = find(said.reference(), said.decision(), Kind.DECISION, issues);
    Content.Decision decision = (Content.Decision) entry.content();
    if (said.day().isBefore(decision.day())) {
      issues.error(
          "L045", DAY, said.day() + " is before the decision, which is of " + decision.day());
    }
    Protocol protocol = protocol(recommendationOf(decision));
    Optional<Outcome> outcome = protocol.outcome(said.outcome());
    List<String> names = protocol.outcomes().stream().map(Outcome::name).toList();
    if (outcome.isEmpty()) {
      issues.error(
          "L047",
          new Place.Whole("outcome"),
          names.isEmpty()
              ? "the protocol of this decision lists no outcomes"
              : "`" + said.outcome() + "` is not an outcome of the protocol",
          names.isEmpty()
              ? Optional.of("list them on its sheet Outcomes")
              : Optional.of(NearestWord.help(said.outcome(), names)));
    }
    Registry.throwIfAny(issues);
    Outcome known = outcome.orElseThrow();
    Content content =
        new Content.Outcome(
            said.reference(),
            entry.sequence(),
            said.day(),
            known.name(),
            known.counts(),
            said.role());
    return ledger.write(writing -> writing.append(content));
  }

  private void common(String reference, String role, LocalDate day, Issues issues) {
    Wording.reference(reference, issues);
    Wording.role(role, issues);
    if (day.isAfter(today)) {
      issues.error("L045", DAY, day + " has not come yet");
    }
  }

  /** The entry that is meant, of this case and kind; without it nothing more can be said. */
  private Entry find(String reference, Optional<Long> sequence, Kind kind, Issues issues) {
    try (Stream<Entry> about = ledger.entriesAbout(reference)) {
      Optional<Entry> found =
          about
              .filter(entry -> entry.kind() == kind)
              .filter(entry -> sequence.isEmpty() || sequence.get() == entry.sequence())
              .reduce((earlier, later) -> later);
      if (found.isPresent()) {
        return found.get();
      }
    }
    String number = sequence.map(n -> "entry " + n + " is not a " + kind).orElse("no " + kind);
    issues.error("L043", LedgerFault.WHOLE, number + " of `" + reference + "` in this ledger");
    throw new RejectedException(issues.list());
  }

  private Content.Recommendation recommendationOf(Content.Decision decision) {
    return ledger
        .entry(decision.recommendation())
        .map(Entry::content)
        .filter(Content.Recommendation.class::isInstance)
        .map(Content.Recommendation.class::cast)
        .orElseThrow(() -> damaged("the recommendation of the decision is not there"));
  }

  private Protocol protocol(Content.Recommendation advised) {
    byte[] workbook =
        ledger
            .document(advised.protocol().workbook())
            .orElseThrow(() -> damaged("the workbook of the recommendation is not there"));
    return ProtocolFile.read("kept workbook", workbook, functions).protocol();
  }

  private static RejectedException damaged(String what) {
    return LedgerFault.of("L044", what, "`cotyla verify` tells what is wrong with the ledger");
  }

  private static List<Choice> choices(Map<String, String> said, Advice advice, Issues issues) {
    NameIndex<Advice.Ranked> rankings = NameIndex.of(advice.rankings(), Advice.Ranked::ranking);
    List<String> names = advice.rankings().stream().map(Advice.Ranked::ranking).toList();
    Map<String, Choice> choices = new LinkedHashMap<>();
    said.forEach(
        (ranking, option) -> {
          Optional<Advice.Ranked> known = rankings.find(ranking);
          if (known.isEmpty()) {
            issues.error(
                "L040",
                CHOICE,
                "`" + ranking + "` is not a ranking of the protocol",
                NearestWord.help(ranking, names));
          } else {
            choice(known.get(), option, issues)
                .ifPresent(choice -> choices.put(known.get().ranking(), choice));
          }
        });
    List<Choice> inOrder = new ArrayList<>();
    for (String name : names) {
      Choice choice = choices.get(name);
      boolean named = said.keySet().stream().anyMatch(k -> Names.key(k).equals(Names.key(name)));
      if (choice != null) {
        inOrder.add(choice);
      } else if (!named) {
        issues.error(
            "L040",
            CHOICE,
            "nothing is said of `" + name + "`",
            "give --choice \""
                + name
                + "=OPTION\", or ="
                + Choice.NOT_LISTED
                + " for none of them");
      }
    }
    return inOrder;
  }

  private static Optional<Choice> choice(Advice.Ranked ranking, String option, Issues issues) {
    if (Names.key(option).equals(Names.key(Choice.NOT_LISTED))) {
      return Optional.of(new Choice(ranking.ranking(), Choice.NOT_LISTED, Choice.Stood.NOT_LISTED));
    }
    Optional<Advice.OptionStanding> known =
        NameIndex.of(ranking.options(), Advice.OptionStanding::option).find(option);
    if (known.isEmpty()) {
      List<String> options =
          new ArrayList<>(ranking.options().stream().map(Advice.OptionStanding::option).toList());
      options.add(Choice.NOT_LISTED);
      issues.error(
          "L040",
          CHOICE,
          "`" + option + "` is not a " + ranking.ranking() + " of the protocol",
          NearestWord.help(option, options));
    }
    return known.map(o -> new Choice(ranking.ranking(), o.option(), o.stood()));
  }

  private static Optional<String> reason(
      Done done, Protocol protocol, boolean followed, Issues issues) {
    Place place = new Place.Whole("reason");
    List<String> names = protocol.reasons().stream().map(Reason::name).toList();
    if (followed) {
      if (done.reason().isPresent()) {
        issues.error(
            "L046", place, "the decision follows the recommendation, so it needs no reason");
      }
      return Optional.empty();
    }
    if (names.isEmpty()) {
      if (done.reason().isPresent() || done.because().isEmpty()) {
        issues.error(
            "L046",
            place,
            "the decision departs, and the protocol lists no reasons",
            "say why in free words with --because, and leave out --reason");
      }
      return Optional.empty();
    }
    Optional<Reason> known = done.reason().flatMap(protocol::reason);
    if (known.isEmpty()) {
      issues.error(
          "L046",
          place,
          done.reason()
              .map(word -> "`" + word + "` is not a reason of the protocol")
              .orElse("the decision departs from the recommendation, so it needs a reason"),
          done.reason()
              .map(word -> NearestWord.help(word, names))
              .orElse("the reasons: " + String.join(", ", names)));
    }
    return known.map(Reason::name);
  }
}
