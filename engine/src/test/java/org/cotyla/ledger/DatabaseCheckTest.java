package org.cotyla.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Verifying looks at the database itself, and")
class DatabaseCheckTest {

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("finds nothing in one that was left alone")
  void leftAlone(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      Verification verification = verify(sample);
      assertThat(verification.breaches()).isEmpty();
      assertThat(verification.remarks()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("remarks that its guards were taken away")
  void withoutGuards(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      sample.tamper();
      assertThat(verify(sample).remarks())
          .singleElement()
          .asString()
          .startsWith("the database's own guards against slips were changed since the ledger was")
          .contains("without `ledger_document_keeps`,")
          .contains("`ledger_entry_follows`, `ledger_entry_keeps`");
    }
  }

  @Test
  @DisplayName("remarks on a trigger that no ledger has")
  void strangeTrigger() {
    try (SampleLedger sample = SampleLedger.in(Database.SQLITE)) {
      sample.execute("CREATE TRIGGER quiet AFTER INSERT ON ledger_entry BEGIN SELECT 1; END");
      assertThat(verify(sample).remarks())
          .singleElement()
          .asString()
          .endsWith("was made: with `quiet`");
    }
  }

  @Test
  @DisplayName("finds an index that leaves entries out, which the table still has")
  void lyingIndex() {
    try (SampleLedger sample = SampleLedger.in(Database.SQLITE)) {
      sample.ledger().write(writing -> writing.append(SampleLedger.decision("A-1")));
      sample.execute(
          "PRAGMA writable_schema = ON",
          "UPDATE sqlite_master SET sql = sql || ' WHERE kind <> ''decision'''"
              + " WHERE name = 'ledger_entry_kind'",
          "PRAGMA writable_schema = RESET",
          "REINDEX ledger_entry_kind",
          "PRAGMA writable_schema = ON",
          "UPDATE sqlite_master SET sql = replace(sql, ' WHERE kind <> ''decision''', '')"
              + " WHERE name = 'ledger_entry_kind'",
          "PRAGMA writable_schema = RESET");
      assertThat(verify(sample).breaches())
          .anySatisfy(
              breach ->
                  assertThat(breach.what()).startsWith("the file of the ledger is damaged: "));
    }
  }

  private static Verification verify(SampleLedger sample) {
    return Verification.of(sample.ledger(), List.of(), Optional.empty(), true);
  }
}
