package org.cotyla.evaluate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.protocol.DecisionTable;

/** Lists what is not known of a case and what each such datum may change. */
final class MissingData {

  private MissingData() {}

  static List<MissingDatum> of(
      Findings findings,
      List<DecisionResult> decisions,
      List<RankingResult> rankings,
      OpenData open) {
    if (findings.data().stream().noneMatch(MissingData::isOpen)) {
      return List.of();
    }
    Map<Symbol, List<String>> firsts = new LinkedHashMap<>();
    Map<Symbol, List<String>> points = new LinkedHashMap<>();
    Map<Symbol, List<String>> changes = new LinkedHashMap<>();
    for (RankingResult ranking : rankings) {
      note(firsts, open.of(ranking), ranking.ranking().name());
      note(points, open.ofPoints(ranking), ranking.ranking().name());
    }
    for (DecisionResult decision : decisions) {
      DecisionTable table = decision.table();
      if (!decision.isCertain() && !table.votes()) {
        note(changes, open.of(decision), table.name());
      }
    }
    return findings.data().stream()
        .filter(MissingData::isOpen)
        .map(
            datum ->
                new MissingDatum(
                    datum,
                    firsts.getOrDefault(datum.field().symbol(), List.of()),
                    changes.getOrDefault(datum.field().symbol(), List.of()),
                    points.getOrDefault(datum.field().symbol(), List.of())))
        .sorted(
            Comparator.<MissingDatum>comparingInt(missing -> -missing.mayChangeFirst().size())
                .thenComparingInt(missing -> -missing.mayChange().size())
                .thenComparingInt(missing -> -missing.mayChangePoints().size()))
        .toList();
  }

  private static boolean isOpen(Datum datum) {
    return datum.knowledge() == Knowledge.MISSING || datum.knowledge() == Knowledge.PARTLY;
  }

  private static void note(Map<Symbol, List<String>> changes, Set<Symbol> open, String name) {
    open.forEach(symbol -> changes.computeIfAbsent(symbol, key -> new ArrayList<>()).add(name));
  }
}
