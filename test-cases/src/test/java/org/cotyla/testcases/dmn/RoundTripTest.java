package org.cotyla.testcases.dmn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.cotyla.dmn.DmnExport;
import org.cotyla.dmn.DmnImport;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.finding.Case;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomCases;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.testcases.house.House;
import org.cotyla.workbook.ProtocolWorkbookWriter;
import org.cotyla.workbook.Workbooks;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A protocol that goes out as a model and comes back as a workbook")
class RoundTripTest {

  private static Protocol back(Protocol protocol) {
    DmnImport brought = DmnImport.read("model.dmn", DmnExport.of(protocol).bytes());
    assertThat(brought.remarks()).isEmpty();
    byte[] workbook = ProtocolWorkbookWriter.write(brought.draft());
    return Workbooks.read("back.xlsx", workbook, FormulaLibrary.installed());
  }

  @Test
  @DisplayName("has the same digest, history and dates, for the house protocol")
  void houseProtocol() {
    Protocol protocol = House.engine().protocol();
    Protocol back = back(protocol);
    assertThat(ProtocolDigest.of(back)).isEqualTo(ProtocolDigest.of(protocol));
    assertThat(back.about()).isEqualTo(protocol.about());
    assertThat(back.changes()).hasSameSizeAs(protocol.changes());
  }

  @Test
  @DisplayName("has the same rows and gives the same answers, for 80 random protocols")
  void randomProtocols() {
    for (long seed = 0; seed < 80; seed++) {
      Protocol protocol = RandomProtocol.of(seed);
      Protocol back = back(protocol);
      assertThat(rows(back)).as("protocol %d", seed).isEqualTo(rows(protocol));
      Engine before = Engine.of(protocol);
      Engine after = Engine.of(back);
      Random random = new Random(seed);
      for (int i = 0; i < 6; i++) {
        Case given = RandomCases.of(protocol, random, i % 4);
        assertThat(answer(after.evaluate(given)))
            .as("protocol %d, %s", seed, given)
            .isEqualTo(answer(before.evaluate(given)));
      }
    }
  }

  private static List<String> rows(Protocol protocol) {
    return protocol
        .allRows()
        .map(row -> row.id() + " " + row.because() + " " + row.sources() + " " + row.vote())
        .toList();
  }

  private static List<Object> answer(Recommendation advice) {
    List<Object> results =
        advice.decisions().stream()
            .sorted(java.util.Comparator.comparing(result -> result.table().name()))
            .<Object>map(RoundTripTest::result)
            .toList();
    List<Object> rankings =
        advice.rankings().stream()
            .<Object>map(
                ranking ->
                    List.of(
                        ranking.first(),
                        ranking.options().stream().map(RankedOption::points).toList()))
            .toList();
    return List.of(results, rankings, advice.calculations());
  }

  private static List<Object> result(DecisionResult result) {
    return List.of(
        result.table().name(),
        result.outputs(),
        result.byDefault(),
        result.counting().stream().map(f -> List.of(f.row().id(), f.results())).toList());
  }
}
