package org.cotyla.testcases.differential;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.protocol.Field;
import org.cotyla.value.Value;

/** The data of a case for the plain interpreter, with every way to fill in what is missing. */
final class PlainData {

  private PlainData() {}

  /** Whether a case leaves anything open. */
  static boolean isComplete(Recommendation advice) {
    return open(advice).isEmpty();
  }

  private static List<Datum> open(Recommendation advice) {
    return advice.findings().data().stream()
        .filter(
            datum ->
                datum.knowledge() == Knowledge.MISSING || datum.knowledge() == Knowledge.PARTLY)
        .toList();
  }

  /**
   * Every way to fill in the open data from representative values, or fewer when there are more
   * than the limit: then the first data are held at one value each.
   */
  static List<Map<Symbol, Object>> completions(
      Recommendation advice, Function<Field, List<Value>> representatives, int limit) {
    Map<Symbol, Object> stated = new HashMap<>();
    for (Datum datum : advice.findings().data()) {
      Object value = datum.value().single().map(PlainFormulas::plain).orElse(null);
      stated.put(datum.field().symbol(), value);
    }
    List<Map<Symbol, Object>> all = new ArrayList<>(List.of(stated));
    for (Datum datum : open(advice)) {
      List<Value> values =
          representatives.apply(datum.field()).stream()
              .filter(datum.value().values()::contains)
              .toList();
      boolean tooMany = (long) all.size() * values.size() > limit;
      List<Map<Symbol, Object>> next = new ArrayList<>();
      for (Map<Symbol, Object> before : all) {
        for (Value value : tooMany ? values.subList(0, 1) : values) {
          Map<Symbol, Object> filled = new HashMap<>(before);
          filled.put(datum.field().symbol(), PlainFormulas.plain(value));
          next.add(filled);
        }
      }
      all = next;
    }
    return all;
  }
}
