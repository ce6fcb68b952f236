package org.cotyla.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.issue.RejectedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A ledger")
class LedgerTest {

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("gives back what was written, in order, each entry with the digest of the last")
  void givesBackInOrder(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      Ledger ledger = sample.ledger();
      Entry first = ledger.write(writing -> writing.append(SampleLedger.decision("A-1")));
      Entry second = ledger.write(writing -> writing.append(SampleLedger.decision("B-2")));
      try (Stream<Entry> entries = ledger.entries()) {
        List<Entry> all = entries.toList();
        assertThat(all).hasSize(3).endsWith(first, second);
        assertThat(all.get(0).previous()).isEqualTo(Entry.NONE_BEFORE);
        assertThat(first.previous()).isEqualTo(all.get(0).digest());
        assertThat(second.previous()).isEqualTo(first.digest());
        assertThat(all).allMatch(e -> e.digest().equals(EntryBody.digest(e.body())));
      }
      assertThat(ledger.entry(3)).contains(second);
      assertThat(ledger.entry(4)).isEmpty();
      try (Stream<Entry> about = ledger.entriesAbout("B-2")) {
        assertThat(about).containsExactly(second);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("writes all of a writing or nothing of it")
  void writesAllOrNothing(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      Ledger ledger = sample.ledger();
      assertThatThrownBy(
              () ->
                  ledger.write(
                      writing -> {
                        writing.append(SampleLedger.decision("A-1"));
                        throw new IllegalStateException("in the middle");
                      }))
          .hasMessage("in the middle");
      Entry next = ledger.write(writing -> writing.append(SampleLedger.decision("B-2")));
      assertThat(next.sequence()).isEqualTo(2);
    }
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("keeps a document once and gives it back to the byte")
  void keepsDocuments(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      byte[] document = "a document, a document".getBytes(java.nio.charset.StandardCharsets.UTF_8);
      String digest = sample.ledger().write(writing -> writing.keep(Document.of(document)));
      String again = sample.ledger().write(writing -> writing.keep(Document.of(document)));
      assertThat(again).isEqualTo(digest);
      assertThat(sample.ledger().document(digest))
          .hasValueSatisfying(kept -> assertThat(kept).isEqualTo(document));
      assertThat(sample.ledger().document(Entry.NONE_BEFORE)).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource(Database.class)
  @DisplayName("is founded once")
  void isFoundedOnce(Database database) {
    try (SampleLedger sample = SampleLedger.in(database)) {
      assertThatThrownBy(sample::foundAgain)
          .isInstanceOf(RejectedException.class)
          .hasMessageStartingWith("error L003 ledger: there is a ledger at ");
      Optional<Entry> founding = sample.ledger().entry(1);
      assertThat(founding).map(Entry::kind).contains(Kind.FOUNDING);
      assertThat(sample.ledger().entry(2)).isEmpty();
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "UPDATE ledger_entry SET body = '{}' WHERE sequence = 1",
        "DELETE FROM ledger_entry",
        "DELETE FROM ledger_entry WHERE sequence = 2",
        "INSERT INTO ledger_entry VALUES (9, 'decision', NULL, 'p', 'd', '{}')",
        "INSERT INTO ledger_entry VALUES (3, 'decision', NULL, 'p', 'd', '{}')",
        "UPDATE ledger_document SET digest = 'x'",
        "DELETE FROM ledger_document"
      })
  @DisplayName("has a database that refuses what a ledger never does")
  void refusesChanges(String sql) throws SQLException {
    for (Database database : Database.available()) {
      try (SampleLedger sample = SampleLedger.in(database)) {
        sample.ledger().write(writing -> writing.append(SampleLedger.decision("A-1")));
        sample.ledger().write(writing -> writing.keep(Document.of(new byte[] {1})));
        try (Connection connection = sample.connect();
            Statement statement = connection.createStatement()) {
          assertThatThrownBy(() -> statement.executeUpdate(sql))
              .isInstanceOf(SQLException.class)
              .hasMessageMatching("(?s).*(never|follows).*");
        }
      }
    }
  }

  @ParameterizedTest(name = "address {0}")
  @ValueSource(
      strings = {"jdbc:mysql://host/db", " ", "jdbc:sqlite::memory:", "http://host/x", "file:x"})
  @DisplayName("says what an address is when it gets another one")
  void refusesAddress(String address) {
    assertThatThrownBy(() -> LedgerAddress.of(address))
        .isInstanceOf(RejectedException.class)
        .hasMessage(
            "error L001 ledger: `"
                + address
                + "` is not the address of a ledger\n"
                + "      help: name a file, or jdbc:postgresql://HOST/DATABASE");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"none.ledger"})
  @DisplayName("is never made by being opened")
  void isNotMadeByOpening(String name) throws SQLException {
    LedgerAddress none = LedgerAddress.of(name);
    assertThatThrownBy(() -> Ledger.open(none, java.time.Clock.systemUTC()))
        .hasMessageStartingWith("error L002 ledger: there is no ledger at none.ledger");
    assertThat(java.nio.file.Path.of(name)).doesNotExist();
    assertThat(DriverManager.getDrivers().hasMoreElements()).isTrue();
  }
}
