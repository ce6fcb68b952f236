package org.cotyla.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Verifying rows that no ledger writes")
class ForgedRowsTest {

  @Test
  @DisplayName("tells of a second entry under the same number, which the chain goes past")
  void secondEntryUnderOneNumber() {
    try (SampleLedger sample = withDecisions()) {
      sample.tamper(
          "ALTER TABLE ledger_entry RENAME TO old_entry",
          "CREATE TABLE ledger_entry AS SELECT * FROM old_entry",
          "INSERT INTO ledger_entry SELECT * FROM old_entry WHERE sequence = 2",
          "DROP TABLE old_entry");
      assertThat(breaches(sample))
          .contains(new Breach(2, Breach.How.INSERTED, "its number stands twice"));
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "no content|\"content\":\\{.*?\\},\"kind\"|\"content\":null,\"kind\"",
        "no case|\"caseReference\":\"B-2\",|",
        "no choices|\"choices\":\\[\\],|",
        "no role|\"role\":\"consultant\"|\"role\":null",
        "another type|\"recommendation\":1|\"recommendation\":\"one\"",
        "one part more|\"role\":\"consultant\"|\"role\":\"consultant\",\"zeal\":1"
      })
  @DisplayName("names the entry whose text lacks a part, and never stumbles over it")
  void lacksPart(String what, String from, String to) {
    try (SampleLedger sample = withDecisions()) {
      rewrite(sample, 3, body -> body.replaceFirst(from, to == null ? "" : to));
      assertThat(breaches(sample))
          .anySatisfy(
              breach -> {
                assertThat(breach.sequence()).isEqualTo(3);
                assertThat(breach.what())
                    .matches("it has no content|it is not sound JSON of an entry");
              });
    }
  }

  @Test
  @DisplayName("names a founding whose key is no base64")
  void unsoundKey() {
    try (SampleLedger sample = withDecisions()) {
      rewrite(sample, 1, body -> body.replaceFirst("\"key\":\"MC", "\"key\":\"?!"));
      assertThat(breaches(sample))
          .contains(new Breach(1, Breach.How.ALTERED, "it is not sound JSON of an entry"));
    }
  }

  private static SampleLedger withDecisions() {
    SampleLedger sample = SampleLedger.in(Database.SQLITE);
    sample.ledger().write(writing -> writing.append(SampleLedger.decision("A-1")));
    sample.ledger().write(writing -> writing.append(SampleLedger.decision("B-2")));
    return sample;
  }

  private static void rewrite(SampleLedger sample, long sequence, UnaryOperator<String> change) {
    String body = sample.ledger().entry(sequence).orElseThrow().body();
    String changed = change.apply(body);
    assertThat(changed).isNotEqualTo(body);
    sample.tamper(
        "UPDATE ledger_entry SET body = '%s', digest = '%s' WHERE sequence = %d"
            .formatted(changed, EntryBody.digest(changed), sequence));
  }

  private static List<Breach> breaches(SampleLedger sample) {
    return Verification.of(sample.ledger(), List.of(), Optional.empty(), true).breaches();
  }
}
