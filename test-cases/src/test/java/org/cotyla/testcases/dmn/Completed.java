package org.cotyla.testcases.dmn;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/** Fills in what a case leaves open, always in the same way. */
final class Completed {

  private Completed() {}

  /** The advice on the case with one value for each datum that its stage asks for. */
  static Recommendation advice(Engine engine, Case given) {
    Recommendation open = engine.evaluate(given);
    Map<String, Object> findings = new LinkedHashMap<>();
    for (Datum datum : open.findings().data()) {
      if (datum.knowledge() != Knowledge.NOT_YET) {
        findings.put(datum.field().name(), DroolsModel.plain(one(datum.value().values())));
      }
    }
    return engine.evaluate(Case.of(findings).atStage(open.findings().stage()));
  }

  /** The only value, the first of a list, or one inside the first stretch. */
  private static Value one(ValueSet values) {
    Interval first = values.parts().get(0);
    Value low = first.low();
    Value high = first.high();
    if (low != null && first.lowIncluded()) {
      return low;
    }
    if (low instanceof Value.NumberValue from && high instanceof Value.NumberValue to) {
      return Value.of(from.number().add(to.number()).divide(BigDecimal.valueOf(2)));
    }
    return Value.of("any");
  }
}
