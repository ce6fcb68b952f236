package org.cotyla.testcases.comparing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ImpactRun;
import org.cotyla.compare.PastCase;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.ShownAs;

/**
 * What a new protocol does to past cases, found by working out both answers to each case whole:
 * against the run that looks only where an edit reaches.
 */
public final class PastCasesAgreement {

  private PastCasesAgreement() {}

  /** Holds the two against each other; gives how many cases change. */
  public static int check(Engine before, Engine after, List<PastCase> cases, String words) {
    Impact impact = ImpactRun.of(before, after, cases.iterator(), 1, done -> {}).impact();
    Map<String, TreeSet<String>> found = new TreeMap<>();
    for (Impact.Group group : impact.groups()) {
      String shift = group.shift().about() + ": " + group.shift().was() + " > ";
      for (String reference : group.references()) {
        found.computeIfAbsent(reference, first -> new TreeSet<>()).add(shift + group.shift().now());
      }
    }
    Map<String, TreeSet<String>> whole = new TreeMap<>();
    int refused = 0;
    for (PastCase one : cases) {
      Optional<Recommendation> was = decided(before, one.given().orElseThrow());
      Optional<Recommendation> is = decided(after, one.given().orElseThrow());
      if (was.isEmpty() || is.isEmpty()) {
        refused++;
        continue;
      }
      TreeSet<String> shifts = shifts(was.get(), is.get());
      if (!shifts.isEmpty()) {
        whole.put(one.reference(), shifts);
      }
    }
    assertThat(found).as("past cases under %s", words).isEqualTo(whole);
    assertThat(impact.cases()).as(words).isEqualTo(cases.size() - refused);
    assertThat(impact.changed()).as(words).isEqualTo(whole.size());
    return whole.size();
  }

  private static Optional<Recommendation> decided(Engine engine, Case given) {
    try {
      return Optional.of(engine.decide(given));
    } catch (RejectedException refused) {
      return Optional.empty();
    }
  }

  private static TreeSet<String> shifts(Recommendation was, Recommendation is) {
    TreeSet<String> shifts = new TreeSet<>();
    for (DecisionResult now : is.decisions()) {
      DecisionTable table = now.table();
      boolean shown = table.shownAs() == ShownAs.HEADLINE && !table.hitPolicy().isList();
      if (shown && !table.votes()) {
        was.decision(table.name())
            .ifPresent(then -> add(shifts, table.name(), words(then), words(now)));
      }
    }
    for (RankingResult now : is.rankings()) {
      was.ranking(now.ranking().name()).ifPresent(then -> ranking(shifts, then, now));
    }
    return shifts;
  }

  private static void ranking(TreeSet<String> shifts, RankingResult was, RankingResult is) {
    add(shifts, is.ranking().name(), leader(was), leader(is));
    for (RankedOption option : is.options()) {
      was.option(option.name())
          .filter(earlier -> isOut(earlier) != isOut(option))
          .ifPresent(
              earlier ->
                  add(
                      shifts,
                      option.name(),
                      earlier.availability().word(),
                      option.availability().word()));
    }
  }

  private static void add(TreeSet<String> shifts, String about, String was, String is) {
    if (!was.equals(is)) {
      shifts.add(about + ": " + was + " > " + is);
    }
  }

  private static boolean isOut(RankedOption option) {
    return option.availability() == RankedOption.Availability.RULED_OUT;
  }

  private static String leader(RankingResult ranking) {
    return ranking.leader().map(RankedOption::name).orElse("nothing, every option is ruled out");
  }

  private static String words(DecisionResult result) {
    List<String> words = new ArrayList<>();
    boolean one = result.table().outputs().size() == 1;
    for (DecisionTable.Output output : result.table().outputs()) {
      String name = output.symbol().name();
      String value =
          Optional.ofNullable(result.outputs().get(name))
              .map(possible -> possible.plain())
              .orElse("nothing");
      words.add(one ? value : name + " " + value);
    }
    return String.join("; ", words);
  }
}
