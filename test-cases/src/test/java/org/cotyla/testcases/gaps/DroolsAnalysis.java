package org.cotyla.testcases.gaps;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.cotyla.dmn.DmnExport;
import org.cotyla.finite.Region;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Protocol;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.dmn.validation.DMNValidator.Validation;
import org.kie.dmn.validation.dtanalysis.InternalDMNDTAnalyserFactory;
import org.kie.dmn.validation.dtanalysis.model.DTAnalysis;
import org.kie.internal.io.ResourceFactory;

/** Drools' own analysis of every decision table of an exported protocol. */
final class DroolsAnalysis {

  /**
   * What Drools says of one table.
   *
   * @param table our table
   * @param skipped why it was not analysed; empty when it was
   * @param gaps boxes in which it sees no row
   * @param overlaps boxes in which it sees several rows, which are counted from 0
   */
  record Told(DecisionTable table, String skipped, List<Region> gaps, List<Overlap> overlaps) {

    boolean isAnalysed() {
      return skipped.isEmpty() && !collects();
    }

    /** Drools looks for neither gaps nor overlaps under any form of hit policy C. */
    boolean collects() {
      HitPolicy policy = table.hitPolicy();
      return policy == HitPolicy.COLLECT || policy.isAggregate() || policy == HitPolicy.COUNT;
    }
  }

  /** Several rows, and where they meet. */
  record Overlap(List<Integer> rows, Region region) {}

  private DroolsAnalysis() {}

  static List<Told> of(Protocol protocol) {
    return analysed(protocol, new String(DmnExport.of(protocol).bytes(), StandardCharsets.UTF_8));
  }

  /**
   * The same with house constants written out in the cells of tests, since Drools skips a table of
   * which any cell names something.
   */
  static List<Told> withConstantsWrittenOut(Protocol protocol) {
    DmnExport export = DmnExport.of(protocol);
    String xml = new String(export.bytes(), StandardCharsets.UTF_8);
    for (Calculation calculation : protocol.calculations()) {
      if (calculation.constant().isPresent()) {
        String name = export.decision(calculation.symbol()).orElseThrow();
        String value = calculation.constant().get().plain();
        xml =
            xml.replaceAll(
                "(<inputEntry>\\s*<text>(?:&[lg]t;=? )?)"
                    + java.util.regex.Pattern.quote(name)
                    + "(</text>)",
                "$1" + value + "$2");
      }
    }
    return analysed(protocol, xml);
  }

  private static List<Told> analysed(Protocol protocol, String xml) {
    DMNRuntime runtime =
        DMNRuntimeBuilder.fromDefaults()
            .buildConfiguration()
            .fromResources(List.of(ResourceFactory.newReaderResource(new StringReader(xml))))
            .getOrElseThrow(failed -> new IllegalStateException("this is not a model", failed));
    List<Told> told = new ArrayList<>();
    for (DTAnalysis analysis :
        InternalDMNDTAnalyserFactory.newDMNDTAnalyser(List.of())
            .analyse(runtime.getModels().get(0), EnumSet.of(Validation.ANALYZE_DECISION_TABLE))) {
      told.add(told(table(protocol, analysis.getSource().getId()), analysis));
    }
    return told;
  }

  /** The export numbers tables; the parts of an aggregate that gives several have two numbers. */
  private static DecisionTable table(Protocol protocol, String id) {
    return protocol.decisions().get(Integer.parseInt(id.split("-")[1]) - 1);
  }

  private static Told told(DecisionTable table, DTAnalysis analysis) {
    if (analysis.isError()) {
      String why = analysis.asDMNMessages().get(0).getMessage();
      return new Told(table, why.substring(why.indexOf("because: ") + 9), List.of(), List.of());
    }
    return new Told(
        table,
        "",
        analysis.getGaps().stream().map(gap -> Boxes.region(table, gap)).toList(),
        analysis.getOverlaps().stream()
            .map(
                overlap ->
                    new Overlap(
                        overlap.getRules().stream().map(number -> number - 1).toList(),
                        Boxes.region(table, overlap.getOverlap())))
            .toList());
  }
}
