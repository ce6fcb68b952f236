package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.Supposition;
import org.cotyla.explain.WhatIf;
import org.cotyla.explain.Why;
import org.cotyla.explain.WhyNot;
import org.cotyla.explore.Goal;
import org.cotyla.explore.Goals;
import org.cotyla.explore.SmallestChange;
import org.cotyla.explore.WhatMatters;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.workbook.Workbooks;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The lines that a host program explains an answer with")
class ExplanationExampleTest {

  @Test
  @DisplayName("compile and run")
  void example() throws IOException {
    List<String> printed = new ArrayList<>();
    Path workbook = Run.HOME.resolve("rules/acetabular-revision.xlsx");
    byte[] json =
        Files.readAllBytes(Run.HOME.resolve("test-cases/cases/loose-cup-up-and-out.json"));
    Engine engine = Engine.of(Workbooks.read(workbook, FormulaLibrary.installed()));
    // README from here
    Case given = CaseJson.read(json);
    Recommendation advice = engine.evaluate(given);
    Why why = Why.of(advice, "cup-cage");
    why.votes().forEach(row -> printed.add(row.points() + " " + row.row().because()));
    WhyNot whyNot = WhyNot.of(engine, advice, "hemispherical cup");
    whyNot.rulings().stream()
        .flatMap(ruling -> ruling.lifts().stream())
        .forEach(lift -> printed.add(lift.field().name() + " as " + lift.values().plain()));
    WhatIf whatIf =
        WhatIf.of(engine, given, List.of(Supposition.written("hip centre migration", "1.2 cm")));
    whatIf.comparison().decisions().forEach(change -> printed.add(change.table().name()));
    WhatMatters.of(engine, advice)
        .data()
        .forEach(one -> printed.add(one.datum().field().name() + ": " + one.cannotMatter()));
    Goal goal = Goals.one(engine.protocol(), "construct=cup-cage");
    SmallestChange.of(engine, advice, goal, 2).sets().stream()
        .flatMap(way -> way.moves().stream())
        .forEach(move -> printed.add(move.before().field().name() + " to " + move.to().plain()));
    // README to here
    assertThat(printed)
        .contains("2 A cage over the cup protects it while bone grows in.")
        .contains(
            "defect contained as yes", "Defect class", "d dimer: true", "host bone contact to 29");
    assertThat(why.addsUp()).isTrue();
  }
}
