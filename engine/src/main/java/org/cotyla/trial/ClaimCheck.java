package org.cotyla.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.evaluate.Contribution;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.name.Names;
import org.cotyla.protocol.ExpectWord;
import org.cotyla.protocol.Row;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Holds an answer against what it should be and collects every difference. */
public final class ClaimCheck {

  private static final String FIRST = "first ";
  private static final String CERTAIN = " is certain";

  private final Recommendation answer;
  private final List<Difference> differences = new ArrayList<>();

  private ClaimCheck(Recommendation answer) {
    this.answer = answer;
  }

  /** Every difference; empty when all is as it should be and the protocol is of one mind. */
  public static List<Difference> differences(Recommendation answer, List<Claim> claims) {
    ClaimCheck check = new ClaimCheck(answer);
    answer
        .faults()
        .forEach(
            fault ->
                check.add(
                    fault.decision(), "no contradiction", fault.message() + " " + fault.code()));
    for (Claim claim : claims) {
      int known = check.differences.size();
      check.hold(claim);
      check
          .differences
          .subList(known, check.differences.size())
          .replaceAll(difference -> difference.expectedAt(claim.at()));
    }
    return check.differences;
  }

  private void hold(Claim claim) {
    Optional<ExpectWord> word = ExpectWord.of(claim.about());
    if (word.isEmpty()) {
      named(claim);
      return;
    }
    switch (word.get()) {
      case FIRST_IS_CERTAIN ->
          answer.rankings().forEach(ranking -> certainty(ranking, claim.values()));
      case NOT_FIRST -> claim.values().forEach(this::notFirst);
      case RULED_OUT -> claim.values().forEach(option -> ruledOut(option, true));
      case NOT_RULED_OUT -> claim.values().forEach(option -> ruledOut(option, false));
      case ROWS -> claim.values().forEach(this::rowCounts);
      case ROWS_NOT -> claim.values().forEach(this::rowDoesNotCount);
      case MAY_MATTER, CANNOT_MATTER, MAY_CHANGE_FIRST_PLACE, CANNOT_CHANGE_FIRST_PLACE ->
          claim
              .values()
              .forEach(
                  field -> MissingDataCheck.hold(answer, word.get(), field).ifPresent(this::add));
    }
  }

  private void named(Claim claim) {
    boolean certainty = claim.about().endsWith(CERTAIN);
    String name =
        certainty
            ? claim.about().substring(0, claim.about().length() - CERTAIN.length())
            : claim.about();
    Optional<RankingResult> ranking =
        name.startsWith(FIRST) ? answer.ranking(name.substring(FIRST.length())) : Optional.empty();
    if (ranking.isPresent() && certainty) {
      certainty(ranking.get(), claim.values());
    } else if (ranking.isPresent()) {
      first(ranking.get(), String.join(" or ", claim.values()));
    } else {
      valueOrList(claim);
    }
  }

  private void valueOrList(Claim claim) {
    Optional<PossibleValues> value =
        answer
            .value(claim.about())
            .or(() -> Optional.ofNullable(answer.calculations().get(claim.about())));
    if (value.isPresent()) {
      value(claim, value.get());
    } else if (answer.decision(claim.about()).isPresent()) {
      list(answer.decision(claim.about()).get(), claim.values());
    } else {
      add(
          claim.about(),
          String.join(" or ", claim.values()),
          "no derived field, calculation, ranking or list of that name");
    }
  }

  private void value(Claim claim, PossibleValues value) {
    Set<String> found = possible(value);
    if (!found.equals(new TreeSet<>(claim.values()))) {
      add(
          new Difference(
              claim.about(),
              String.join(" or ", claim.values()),
              String.join(" or ", found),
              givers(claim.about())));
    }
  }

  /** The rows that are, or may be, the reason for a value. */
  private List<Row> givers(String name) {
    return answer.decisions().stream()
        .filter(decision -> decision.outputs().containsKey(name))
        .flatMap(
            decision ->
                decision.byDefault()
                    ? decision.table().otherwise().stream()
                    : decision.counting().stream().map(Firing::row))
        .toList();
  }

  private static Set<String> possible(PossibleValues value) {
    Stream<String> values =
        value.values().isFinite()
            ? value.values().values().stream().map(Value::plain)
            : Stream.of(value.values().plain());
    Stream<String> nothing = value.orNothing() ? Stream.of("nothing") : Stream.empty();
    return Stream.concat(values, nothing).collect(Collectors.toCollection(TreeSet::new));
  }

  private void first(RankingResult ranking, String expected) {
    Optional<RankedOption> leader = ranking.leader();
    String found = leader.map(RankedOption::name).orElse("nothing");
    if (!found.equals(expected)) {
      String standings =
          ranking.inPlay().stream()
              .limit(3)
              .map(option -> option.name() + " " + option.points().plain())
              .collect(Collectors.joining(", ", " (", ")"));
      Stream<RankedOption> concerned =
          Stream.concat(ranking.option(expected).stream(), leader.stream());
      List<Row> rows =
          concerned
              .flatMap(option -> option.contributions().stream())
              .filter(Contribution::isCertain)
              .map(contribution -> contribution.firing().row())
              .toList();
      add(new Difference(FIRST + ranking.ranking().name(), expected, found + standings, rows));
    }
  }

  private void certainty(RankingResult ranking, List<String> values) {
    String expected = String.join(" or ", values);
    String found = ranking.firstIsCertain() ? "yes" : "no";
    if (!found.equals(expected)) {
      add(
          FIRST + ranking.ranking().name() + CERTAIN,
          expected,
          found + " (can be " + ranking.first().plain() + ")");
    }
  }

  private void notFirst(String name) {
    Optional<RankedOption> option = option(name, ExpectWord.NOT_FIRST);
    if (option.filter(RankedOption::canBeFirst).isPresent()) {
      add(ExpectWord.NOT_FIRST.word(), name, "it can come first");
    }
  }

  private void ruledOut(String name, boolean expected) {
    ExpectWord word = expected ? ExpectWord.RULED_OUT : ExpectWord.NOT_RULED_OUT;
    option(name, word)
        .filter(
            option -> expected != (option.availability() == RankedOption.Availability.RULED_OUT))
        .ifPresent(
            option ->
                add(
                    new Difference(
                        word.word(),
                        name,
                        option.availability().word(),
                        option.rulings().stream().map(c -> c.firing().row()).toList())));
  }

  private Optional<RankedOption> option(String name, ExpectWord word) {
    Optional<RankedOption> option =
        answer.rankings().stream().flatMap(r -> r.option(name).stream()).findFirst();
    if (option.isEmpty()) {
      add(word.word(), name, "the protocol has no such option");
    }
    return option;
  }

  private void rowCounts(String id) {
    Optional<DecisionResult> decision = decisionOf(id);
    Optional<Firing> firing = firing(id);
    if (decision.isEmpty()) {
      add(ExpectWord.ROWS.word(), id, "the protocol has no such row");
    } else if (firing.isEmpty()) {
      add(new Difference(ExpectWord.ROWS.word(), id, "it does not fire", counting(decision.get())));
    } else if (firing.get().standing() != Standing.DECIDES) {
      add(
          new Difference(
              ExpectWord.ROWS.word(),
              id,
              "it fires but " + firing.get().standing().word(),
              counting(decision.get())));
    }
  }

  /** What counts instead; rows that vote stand beside each other and none is instead of another. */
  private static List<Row> counting(DecisionResult decision) {
    boolean alone = decision.table().hitPolicy().isSingleHit();
    return alone ? decision.counting().stream().map(Firing::row).toList() : List.of();
  }

  private void rowDoesNotCount(String id) {
    if (decisionOf(id).isEmpty()) {
      add(ExpectWord.ROWS_NOT.word(), id, "the protocol has no such row");
    }
    firing(id)
        .filter(Firing::counts)
        .ifPresent(
            firing ->
                add(
                    new Difference(
                        ExpectWord.ROWS_NOT.word(), id, "it counts", List.of(firing.row()))));
  }

  private Optional<DecisionResult> decisionOf(String id) {
    return answer.decisions().stream()
        .filter(d -> d.table().rows().stream().anyMatch(row -> same(row.id(), id)))
        .findFirst();
  }

  private Optional<Firing> firing(String id) {
    return answer.firings().stream().filter(f -> same(f.row().id(), id)).findFirst();
  }

  private static boolean same(String id, String other) {
    return Names.key(id).equals(Names.key(other));
  }

  private void list(DecisionResult decision, List<String> ids) {
    List<Row> rows = decision.counting().stream().map(Firing::row).toList();
    for (String id : ids) {
      Optional<Firing> listed =
          decision.counting().stream().filter(firing -> same(firing.row().id(), id)).findFirst();
      if (listed.isEmpty()) {
        add(new Difference(decision.table().name(), id, "it is not listed", rows));
      } else if (listed.get().standing() != Standing.DECIDES) {
        List<Row> open = List.of(listed.get().row());
        add(new Difference(decision.table().name(), id, "it only may be listed", open));
      }
    }
  }

  private void add(String about, String expected, String got) {
    add(Difference.of(about, expected, got));
  }

  private void add(Difference difference) {
    differences.add(difference);
  }
}
