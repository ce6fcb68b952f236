package org.cotyla.testcases.dmn;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.cotyla.dmn.DmnExport;
import org.cotyla.dmn.HostValue;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Datum;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNMessage;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNResult;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/**
 * An exported protocol in Drools' own DMN engine, which shares no line with ours that reads, tests
 * or sums anything.
 */
final class DroolsModel {

  private final DmnExport export;
  private final DMNRuntime runtime;
  private final DMNModel model;

  DroolsModel(Protocol protocol) {
    this.export = DmnExport.of(protocol);
    String xml = new String(export.bytes(), StandardCharsets.UTF_8);
    this.runtime =
        DMNRuntimeBuilder.fromDefaults()
            .buildConfiguration()
            .fromResources(List.of(ResourceFactory.newReaderResource(new StringReader(xml))))
            .getOrElseThrow(
                failed -> new IllegalStateException("the export is not a model", failed));
    this.model = runtime.getModels().get(0);
  }

  DmnExport export() {
    return export;
  }

  /** What Drools has to say of the model itself. */
  List<String> remarks() {
    return model.getMessages().stream().map(DMNMessage::getText).toList();
  }

  /** Runs every decision on the findings of the advice, which must be complete. */
  DMNResult run(Recommendation advice) {
    DMNContext context = runtime.newContext();
    for (Datum datum : advice.findings().data()) {
      context.set(export.inputs().get(datum.field()), plain(datum.value()));
    }
    Scope scope = scope(advice);
    for (HostValue host : export.hostValues()) {
      context.set(host.name(), plain(host.call().evaluate(scope)));
    }
    return runtime.evaluateAll(model, context);
  }

  /** Every finding and whatever was worked out from them. */
  static Scope scope(Recommendation advice) {
    Protocol protocol = advice.protocol();
    Map<Symbol, PossibleValues> known = new HashMap<>();
    for (Datum datum : advice.findings().data()) {
      known.put(datum.field().symbol(), datum.value());
    }
    Map<String, Symbol> symbols =
        protocol.vocabulary().symbols().stream()
            .collect(Collectors.toMap(Symbol::name, symbol -> symbol));
    for (Calculation calculation : protocol.calculations()) {
      known.put(calculation.symbol(), advice.calculations().get(calculation.name()));
    }
    for (DecisionResult result : advice.decisions()) {
      result.outputs().forEach((name, value) -> known.put(symbols.get(name), value));
    }
    for (RankingResult result : advice.rankings()) {
      known.put(result.ranking().first(), result.first());
    }
    return known::get;
  }

  /** The value as Drools takes and gives it; null for nothing. */
  static Object plain(PossibleValues value) {
    if (value.isNothing()) {
      return null;
    }
    return plain(value.single().orElseThrow(() -> new AssertionError(value + " is not one value")));
  }

  static Object plain(Value value) {
    if (value instanceof Value.NumberValue number) {
      return number.number();
    }
    if (value instanceof Value.YesNoValue answer) {
      return answer.yes();
    }
    return value instanceof Value.DateValue day ? day.date() : value.plain();
  }

  /** Whether the two are one value, whatever digits a number is written with. */
  static boolean same(Object ours, Object theirs) {
    if (ours instanceof BigDecimal number && theirs instanceof BigDecimal other) {
      return number.compareTo(other) == 0;
    }
    boolean day = ours instanceof LocalDate && theirs instanceof LocalDate;
    return day ? ours.equals(theirs) : java.util.Objects.equals(ours, theirs);
  }
}
