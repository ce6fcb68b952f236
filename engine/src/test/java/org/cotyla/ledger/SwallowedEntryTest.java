package org.cotyla.ledger;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A database that swallows entries")
class SwallowedEntryTest {

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("is found out before the entry is acknowledged")
  void isFoundOut(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      sample.execute(
          database == Database.SQLITE
              ? "CREATE TRIGGER quiet BEFORE INSERT ON ledger_entry WHEN NEW.kind = 'decision'"
                  + " BEGIN SELECT RAISE(IGNORE); END"
              : "CREATE FUNCTION quiet() RETURNS trigger LANGUAGE plpgsql AS $$"
                  + " BEGIN RETURN NULL; END $$;"
                  + " CREATE TRIGGER quiet BEFORE INSERT ON ledger_entry FOR EACH ROW"
                  + " EXECUTE FUNCTION quiet()");
      refuses(sample);
    }
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("is found out when it takes the entry and drops it at once")
  void isFoundOutAfterwards(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      sample.tamper();
      sample.execute(
          database == Database.SQLITE
              ? "CREATE TRIGGER quiet AFTER INSERT ON ledger_entry"
                  + " BEGIN DELETE FROM ledger_entry WHERE sequence = NEW.sequence; END"
              : "CREATE FUNCTION quiet() RETURNS trigger LANGUAGE plpgsql AS $$"
                  + " BEGIN DELETE FROM ledger_entry WHERE sequence = NEW.sequence; RETURN NULL; END"
                  + " $$; CREATE TRIGGER quiet AFTER INSERT ON ledger_entry FOR EACH ROW"
                  + " EXECUTE FUNCTION quiet()");
      refuses(sample);
    }
  }

  private static void refuses(SampleLedger sample) {
    assertThatThrownBy(
            () -> sample.ledger().write(writing -> writing.append(SampleLedger.decision("A-1"))))
        .isInstanceOf(RejectedException.class)
        .hasMessageMatching(
            "(?s)error L006 ledger: the database at .* did not keep the entry that it was given\n"
                + "      help: something in it swallows entries, .*; nothing was recorded");
  }
}
