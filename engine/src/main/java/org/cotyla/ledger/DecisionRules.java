package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Outcome;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Reason;

/**
 * What a decision and an outcome must say, by the recommendation and the protocol that they answer.
 * Whoever records one is held to it, and so is an entry that is verified.
 */
final class DecisionRules {

  private static final Place CHOICE = new Place.Whole("choice");
  private static final Place DAY = new Place.Whole("day");
  private static final Place REASON = new Place.Whole("reason");

  private DecisionRules() {}

  /** That something was not done before what it answers. */
  static void day(LocalDate day, LocalDate earliest, String what, Issues issues) {
    if (day.isBefore(earliest)) {
      issues.error("L045", DAY, day + " is before the " + what + ", which is of " + earliest);
    }
  }

  /** One choice for each ranking, in the order of the recommendation, and how each stood. */
  static List<Choice> choices(List<DecisionRecorder.Chosen> said, Advice advice, Issues issues) {
    NameIndex<Advice.Ranked> rankings = NameIndex.of(advice.rankings(), Advice.Ranked::ranking);
    List<String> names = advice.rankings().stream().map(Advice.Ranked::ranking).toList();
    Map<String, DecisionRecorder.Chosen> chosen = new HashMap<>();
    for (DecisionRecorder.Chosen one : said) {
      Optional<Advice.Ranked> known = rankings.find(one.ranking());
      if (known.isEmpty()) {
        issues.error(
            "L040",
            CHOICE,
            "`" + one.ranking() + "` is not a ranking of the protocol",
            NearestWord.help(one.ranking(), names));
      } else if (chosen.putIfAbsent(known.get().ranking(), one) != null) {
        issues.error("L040", CHOICE, "`" + known.get().ranking() + "` is chosen twice");
      }
    }
    List<Choice> inOrder = new ArrayList<>();
    for (Advice.Ranked ranking : advice.rankings()) {
      DecisionRecorder.Chosen one = chosen.get(ranking.ranking());
      if (one == null) {
        issues.error(
            "L040",
            CHOICE,
            "nothing is said of `" + ranking.ranking() + "`",
            "give --choice \""
                + ranking.ranking()
                + "=OPTION\", or ="
                + Choice.NOT_LISTED
                + " for none of them");
      } else {
        choice(ranking, one.option(), issues).ifPresent(inOrder::add);
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

  /** Whether each choice is one that stood first. */
  static boolean followed(List<Choice> choices) {
    return choices.stream().allMatch(choice -> choice.stood() == Choice.Stood.FIRST);
  }

  /** The reason for departing, of the protocol's list; a decision that follows has none. */
  static Optional<String> reason(
      Optional<String> said,
      Optional<String> because,
      boolean followed,
      Protocol protocol,
      Issues issues) {
    List<String> names = protocol.reasons().stream().map(Reason::name).toList();
    if (followed) {
      if (said.isPresent()) {
        issues.error(
            "L046", REASON, "the decision follows the recommendation, so it needs no reason");
      }
      return Optional.empty();
    }
    if (names.isEmpty()) {
      if (said.isPresent() || because.isEmpty()) {
        issues.error(
            "L046",
            REASON,
            "the decision departs, and the protocol lists no reasons",
            "say why in free words with --because, and leave out --reason");
      }
      return Optional.empty();
    }
    Optional<Reason> known = said.flatMap(protocol::reason);
    if (known.isEmpty()) {
      issues.error(
          "L046",
          REASON,
          said.map(word -> "`" + word + "` is not a reason of the protocol")
              .orElse("the decision departs from the recommendation, so it needs a reason"),
          said.map(word -> NearestWord.help(word, names))
              .orElse("the reasons: " + String.join(", ", names)));
    }
    return known.map(Reason::name);
  }

  /** The outcome of the protocol's list that a word names. */
  static Optional<Outcome> outcome(String said, Protocol protocol, Issues issues) {
    Optional<Outcome> known = protocol.outcome(said);
    List<String> names = protocol.outcomes().stream().map(Outcome::name).toList();
    if (known.isEmpty()) {
      issues.error(
          "L047",
          new Place.Whole("outcome"),
          names.isEmpty()
              ? "the protocol of this decision lists no outcomes"
              : "`" + said + "` is not an outcome of the protocol",
          names.isEmpty()
              ? Optional.of("list them on its sheet Outcomes")
              : Optional.of(NearestWord.help(said, names)));
    }
    return known;
  }
}
