package org.cotyla.testcases.library;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.evaluate.Standing;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.jspecify.annotations.Nullable;

/** Holds a recommendation against what is expected of it and collects every difference. */
final class ExpectationCheck {

  private static final String FIRST = "first ";
  private static final String CERTAIN = " is certain";

  private final Recommendation recommendation;
  private final List<String> differences = new ArrayList<>();

  private ExpectationCheck(Recommendation recommendation) {
    this.recommendation = recommendation;
  }

  /** Every difference as a sentence; empty when all is as expected. */
  static List<String> differences(Recommendation recommendation, Map<String, JsonNode> expect) {
    ExpectationCheck check = new ExpectationCheck(recommendation);
    recommendation.faults().forEach(fault -> check.differences.add(fault.plain()));
    expect.forEach(check::hold);
    return check.differences;
  }

  private void hold(String key, JsonNode expected) {
    switch (key) {
      case "first is certain" -> recommendation.rankings().forEach(r -> certainty(r, expected));
      case "not first" -> texts(expected).forEach(this::notFirst);
      case "ruled out" -> texts(expected).forEach(option -> ruledOut(option, true));
      case "not ruled out" -> texts(expected).forEach(option -> ruledOut(option, false));
      case "rows" -> texts(expected).forEach(this::rowCounts);
      case "rows not" -> texts(expected).forEach(this::rowDoesNotCount);
      case "lists" -> expected.properties().forEach(e -> list(e.getKey(), texts(e.getValue())));
      default -> {
        if (!MissingDataCheck.hold(recommendation, key, texts(expected), differences)) {
          first(key, expected);
        }
      }
    }
  }

  private void first(String key, JsonNode expected) {
    boolean certainty = key.endsWith(CERTAIN);
    String name = certainty ? key.substring(0, key.length() - CERTAIN.length()) : key;
    Optional<RankingResult> ranking =
        name.startsWith(FIRST)
            ? recommendation.ranking(name.substring(FIRST.length()))
            : Optional.empty();
    if (ranking.isEmpty()) {
      value(key, expected);
    } else if (certainty) {
      certainty(ranking.get(), expected);
    } else {
      String leader = ranking.get().leader().map(RankedOption::name).orElse("nothing");
      same(name, expected.asText(), leader + standings(ranking.get()), leader);
    }
  }

  private void value(String name, JsonNode expected) {
    Optional<PossibleValues> value =
        recommendation
            .value(name)
            .or(() -> Optional.ofNullable(recommendation.calculations().get(name)));
    if (value.isEmpty()) {
      differences.add("`" + name + "` is no derived field, calculation or ranking");
      return;
    }
    String found = String.join(", ", possible(value.get()));
    same(name, String.join(", ", new TreeSet<>(texts(expected))), found, found);
  }

  private static Set<String> possible(PossibleValues value) {
    Stream<String> values =
        value.values().isFinite()
            ? value.values().values().stream().map(Value::plain)
            : Stream.of(value.values().plain());
    Stream<String> nothing = value.orNothing() ? Stream.of("nothing") : Stream.empty();
    return Stream.concat(values, nothing).collect(Collectors.toCollection(TreeSet::new));
  }

  private void certainty(RankingResult ranking, JsonNode expected) {
    String name = FIRST + ranking.ranking().name() + CERTAIN;
    String found = Boolean.toString(ranking.firstIsCertain());
    same(name, expected.asText(), found + " (can be " + ranking.first().plain() + ")", found);
  }

  private void notFirst(String option) {
    RankedOption ranked = option(option);
    if (ranked != null && ranked.canBeFirst()) {
      differences.add("`" + option + "` can come first, which it must not");
    }
  }

  private void ruledOut(String option, boolean expected) {
    RankedOption ranked = option(option);
    boolean out = ranked != null && ranked.availability() == RankedOption.Availability.RULED_OUT;
    if (ranked != null && out != expected) {
      differences.add("`" + option + "` is " + ranked.availability().word() + rulings(ranked));
    }
  }

  private @Nullable RankedOption option(String name) {
    Optional<RankedOption> option =
        recommendation.rankings().stream().flatMap(r -> r.option(name).stream()).findFirst();
    if (option.isEmpty()) {
      differences.add("the protocol has no option `" + name + "`");
    }
    return option.orElse(null);
  }

  private static String rulings(RankedOption option) {
    String rows =
        option.rulings().stream()
            .map(ruling -> ruling.firing().row().id())
            .collect(Collectors.joining(", "));
    return rows.isEmpty() ? "" : " by " + rows;
  }

  private static String standings(RankingResult ranking) {
    return ranking.inPlay().stream()
        .limit(3)
        .map(option -> option.name() + " " + option.points().plain())
        .collect(Collectors.joining(", ", " (", ")"));
  }

  private void rowCounts(String id) {
    Optional<Firing> firing = firing(id);
    boolean known = recommendation.protocol().allRows().anyMatch(row -> row.id().equals(id));
    if (!known) {
      differences.add("the protocol has no row " + id);
    } else if (firing.isEmpty()) {
      differences.add(id + " does not fire");
    } else if (firing.get().standing() != Standing.DECIDES) {
      differences.add(id + " fires but " + firing.get().standing().word());
    }
  }

  private void rowDoesNotCount(String id) {
    firing(id)
        .filter(Firing::counts)
        .ifPresent(firing -> differences.add(id + " counts, which it must not"));
  }

  private Optional<Firing> firing(String id) {
    return recommendation.firings().stream().filter(f -> f.row().id().equals(id)).findFirst();
  }

  private void list(String decision, List<String> rows) {
    if (recommendation.decision(decision).isEmpty()) {
      differences.add("the protocol has no decision `" + decision + "`");
      return;
    }
    List<String> counting =
        recommendation.decision(decision).orElseThrow().counting().stream()
            .map(firing -> firing.row().id())
            .toList();
    rows.stream()
        .filter(row -> !counting.contains(row))
        .forEach(row -> differences.add("`" + decision + "` lacks " + row + ": " + counting));
  }

  private void same(String name, String expected, String shown, String found) {
    if (!expected.equals(found)) {
      differences.add("`" + name + "` is " + shown + ", expected " + expected);
    }
  }

  private static List<String> texts(JsonNode node) {
    List<String> texts = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(item -> texts.addAll(texts(item)));
    } else if (node.isBoolean()) {
      texts.add(node.booleanValue() ? "yes" : "no");
    } else if (node.isNumber()) {
      texts.add(Value.of(node.decimalValue()).plain());
    } else {
      texts.add(node.asText());
    }
    return texts;
  }
}
