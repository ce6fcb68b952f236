package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cotyla.cli.LedgerFile.Hands;
import org.cotyla.json.TidyJson;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerAddress;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("cotyla verify")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TamperingTest {

  private static final String OTHER_CONSTRUCT = "\"option\":\"cup-cage\",\"ranking\"";

  /** By the database; without a server its ways are not tried, and one test is skipped for it. */
  private final Map<String, LedgerFile> wholes = new LinkedHashMap<>();

  @BeforeAll
  void fill(@TempDir Path folder) throws IOException {
    wholes.put("SQLite", LedgerFile.filled(Files.createDirectory(folder.resolve("file"))));
    if (LedgerFile.hasServer()) {
      wholes.put(
          "PostgreSQL", LedgerFile.filledOnServer(Files.createDirectory(folder.resolve("server"))));
    }
  }

  @AfterAll
  void drop() {
    wholes.values().forEach(LedgerFile::drop);
  }

  private LedgerFile whole(String database) {
    return Optional.ofNullable(wholes.get(database)).orElseThrow();
  }

  @Test
  @DisplayName("is tried on PostgreSQL where COTYLA_TEST_POSTGRESQL names a server")
  void onServer() {
    Assumptions.assumeTrue(LedgerFile.hasServer(), "no PostgreSQL server; see .ci/run");
    assertThat(whole("PostgreSQL").run("verify").out()).endsWith("\nThe ledger holds\n");
  }

  Stream<Arguments> everywhere() {
    return wholes.keySet().stream()
        .flatMap(
            database ->
                tampering()
                    .map(way -> Arguments.of(database, way.get()[0], way.get()[1], way.get()[2])));
  }

  static Stream<Arguments> tampering() {
    return Stream.of(
        way(
            "a word of a decision is changed",
            "entry 8 altered: its digest is not the digest of what it says",
            h -> h.replace(8, "own experience", "general condition")),
        way(
            "a decision is changed with its digest",
            "entry 8 altered: entry 9 follows another one than this",
            h -> {
              h.replace(8, "own experience", "general condition");
              h.digest(8);
            }),
        way(
            "a decision is changed and the whole rest made to fit",
            "entry 8 altered: how its choices stood",
            h -> {
              h.replace(8, OTHER_CONSTRUCT, "\"option\":\"oblong cup\",\"ranking\"");
              h.rechain(8);
            }),
        way(
            "a reason is changed and the whole rest made to fit",
            "entry 9 altered: it or one before it is not what the checkpoint",
            h -> {
              h.replace(8, "own experience", "general condition");
              h.rechain(8);
            }),
        way(
            "the choices of a departure are taken out and the rest made to fit",
            "entry 8 altered: nothing is said of `construct`",
            h -> {
              String body = h.one("SELECT body FROM ledger_entry WHERE sequence = 8");
              String choices = body.replaceFirst("(?s).*(\"choices\":\\[.*?\\]).*", "$1");
              h.replace(8, choices, "\"choices\":[]");
              h.replace(8, "\"followed\":false", "\"followed\":true");
              h.rechain(8);
            }),
        way(
            "a reason that the protocol does not list is put in and the rest made to fit",
            "entry 8 altered: `mood` is not a reason of the protocol",
            h -> {
              h.replace(8, "own experience", "mood");
              h.rechain(8);
            }),
        way(
            "an outcome is made to count for nothing and the rest made to fit",
            "entry 9 altered: how its outcome counts is not what the protocol says",
            h -> {
              h.replace(9, "\"counts\":\"event\"", "\"counts\":\"censoring\"");
              h.rechain(9);
            }),
        way(
            "an outcome is dated before its decision and the rest made to fit",
            "entry 9 altered: 2026-11-15 is before the decision, which is of 2026-12-15",
            h -> {
              h.replace(9, "\"day\":\"2026-12-15\"", "\"day\":\"2026-11-15\"");
              h.rechain(9);
            }),
        way(
            "an entry is deleted",
            "entry 6 missing: there is no entry 6",
            h -> h.sql("DELETE FROM ledger_entry WHERE sequence = 6")),
        way(
            "an entry is deleted and the rest moved up",
            "entry 6 missing: what stands in its place was written as entry 7",
            h -> {
              h.sql("DELETE FROM ledger_entry WHERE sequence = 6");
              for (int i = 7; i <= 11; i++) {
                h.sql("UPDATE ledger_entry SET sequence = sequence - 1 WHERE sequence = " + i);
              }
            }),
        way(
            "two entries change places",
            "entry 5 reordered: it was written as entry 6",
            h -> {
              h.sql("UPDATE ledger_entry SET sequence = 99 WHERE sequence = 5");
              h.sql("UPDATE ledger_entry SET sequence = 5 WHERE sequence = 6");
              h.sql("UPDATE ledger_entry SET sequence = 6 WHERE sequence = 99");
            }),
        way(
            "an entry is put between two",
            "entry 8 inserted: what stands behind it",
            h -> {
              String body = h.one("SELECT body FROM ledger_entry WHERE sequence = 8");
              for (int i = 11; i >= 8; i--) {
                h.sql("UPDATE ledger_entry SET sequence = sequence + 1 WHERE sequence = " + i);
              }
              h.sql(
                  "INSERT INTO ledger_entry SELECT 8, kind, case_reference, previous || 'x', 'd',"
                      + " body FROM ledger_entry WHERE sequence = 9");
              h.replace(8, "own experience", "general condition");
              h.digest(8);
              h.sql("UPDATE ledger_entry SET previous = substr(previous, 1, 71) || '' WHERE false");
              assertThat(body).contains("own experience");
            }),
        way(
            "an entry is put at the end for a case that has none",
            "entry 12 altered: its recommendation, entry 6, is not one of its case",
            h -> {
              h.sql(
                  "INSERT INTO ledger_entry SELECT 12, kind, 'R-9', 'p', 'd', body FROM"
                      + " ledger_entry WHERE sequence = 8");
              h.replace(12, "\"R-2\"", "\"R-9\"");
              h.replace(12, "\"sequence\":8", "\"sequence\":12");
              h.rechain(11);
            }),
        way(
            "the end is cut off",
            "entry 10 truncated: the checkpoint of ",
            h -> h.sql("DELETE FROM ledger_entry WHERE sequence > 9")),
        way(
            "everything is deleted",
            "entry 1 missing: the ledger has no entries",
            h -> h.sql("DELETE FROM ledger_entry")),
        way(
            "a digest is changed",
            "entry 3 altered: its digest is not the digest of what it says",
            h -> h.sql("UPDATE ledger_entry SET digest = 'sha256:0' WHERE sequence = 3")),
        way(
            "the kept workbook is exchanged for other bytes",
            "entry 2 altered: the workbook that was kept for it was exchanged or changed",
            h -> {
              String other = h.keep("another workbook".getBytes(StandardCharsets.UTF_8));
              String workbook = workbook(h);
              h.sql(
                  "UPDATE ledger_document SET content = (SELECT content FROM ledger_document WHERE"
                      + " digest = '"
                      + other
                      + "') WHERE digest = '"
                      + workbook
                      + "'");
              h.sql("DELETE FROM ledger_document WHERE digest = '" + other + "'");
            }),
        way(
            "the kept workbook is deleted",
            "entry 2 altered: the workbook that was kept for it is not there",
            h -> h.sql("DELETE FROM ledger_document WHERE digest = '" + workbook(h) + "'")),
        way(
            "a kept recommendation is damaged",
            "entry 6 altered: the recommendation that was kept for it was exchanged or changed",
            h -> h.exchange(advice(h, 6), new byte[] {0})),
        way(
            "two kept documents change places",
            "entry 2 altered: the workbook that was kept for it was exchanged or changed",
            h -> {
              String one = workbook(h);
              String other = advice(h, 6);
              h.sql("UPDATE ledger_document SET digest = 'x' WHERE digest = '" + one + "'");
              h.sql(
                  "UPDATE ledger_document SET digest = '"
                      + one
                      + "' WHERE digest = '"
                      + other
                      + "'");
              h.sql("UPDATE ledger_document SET digest = '" + other + "' WHERE digest = 'x'");
            }),
        way(
            "the signatures of two approvals change places and the rest is made to fit",
            "entry 2 altered: its signature is not one of what it says",
            h -> {
              String lead = signature(h, 2);
              String quality = signature(h, 3);
              h.replace(2, lead, quality);
              h.replace(3, quality, lead);
              h.rechain(2);
            }),
        way(
            "the role of a decision is changed and the whole rest made to fit",
            "entry 9 altered: it or one before it is not what the checkpoint",
            h -> {
              h.replace(7, "\"role\":\"consultant\"", "\"role\":\"fellow\"");
              h.rechain(7);
            }),
        way(
            "an outcome is given to another case and the rest made to fit",
            "entry 9 altered: its decision, entry 8, is not one of its case",
            h -> {
              h.replace(9, "\"R-2\"", "\"R-1\"");
              h.sql("UPDATE ledger_entry SET case_reference = 'R-1' WHERE sequence = 9");
              h.rechain(9);
            }),
        way(
            "the kind beside an entry is changed",
            "entry 7 altered: the columns beside it",
            h -> h.sql("UPDATE ledger_entry SET kind = 'outcome' WHERE sequence = 7")),
        way(
            "the digest of the entry before is changed beside an entry",
            "entry 7 altered: ",
            h -> h.sql("UPDATE ledger_entry SET previous = 'sha256:1' WHERE sequence = 7")),
        way(
            "the numbers are moved up from an entry on",
            "entry 5 missing: ",
            h -> {
              for (int i = 11; i >= 5; i--) {
                h.sql("UPDATE ledger_entry SET sequence = sequence + 1 WHERE sequence = " + i);
              }
            }),
        way(
            "a recommendation is exchanged for another and everything made to fit",
            "entry 6 altered: run again, the recommendation differs from line 1 on",
            h -> {
              String old = advice(h, 6);
              String other = h.keep("{\"advice\": \"cup-cage\"}".getBytes(StandardCharsets.UTF_8));
              h.replace(6, old, other);
              h.sql("DELETE FROM ledger_document WHERE digest = '" + old + "'");
              h.rechain(6);
            }),
        way(
            "what is said in short of a recommendation is changed and the rest made to fit",
            "entry 6 altered: run again, it does not come to what the entry says in short",
            h -> {
              h.replace(6, "\"faults\":0", "\"faults\":1");
              h.rechain(6);
            }),
        way(
            "a finding is changed and the rest made to fit",
            "entry 6 altered: its findings are not those of its case digest",
            h -> {
              h.replace(
                  6, "\\\"hip centre migration\\\":[\\\"", "\\\"hip centre migration\\\":[\\\"1");
              h.rechain(6);
            }),
        way(
            "where a protocol was in its life is changed and the rest made to fit",
            "entry 6 altered: where it says the protocol was in its life",
            h -> {
              h.replace(6, "\"life\":\"in force\"", "\"life\":\"draft\"");
              h.rechain(6);
            }),
        way(
            "the signature of an approval is changed and the rest made to fit",
            "entry 3 altered: its signature is not one of what it says",
            h -> {
              String value = signature(h, 3);
              h.replace(
                  3,
                  value,
                  value.startsWith("A") ? "B" + value.substring(1) : "A" + value.substring(1));
              h.rechain(3);
            }),
        way(
            "the day of an approval is changed and the rest made to fit",
            "entry 2 altered: what was signed is not what the entry says",
            h -> {
              h.replace(
                  2, "\"effectiveFrom\":\"2026-12-01\",", "\"effectiveFrom\":\"2026-11-01\",");
              h.rechain(2);
            }),
        way(
            "the time of an entry is changed and the rest made to fit",
            "entry 9 altered: it or one before it is not what the checkpoint",
            h -> {
              h.replace(7, "2026-12-15T10:00:00Z", "2026-12-14T10:00:00Z");
              h.rechain(7);
            }),
        way(
            "the case beside an entry is changed",
            "entry 7 altered: the columns beside it",
            h -> h.sql("UPDATE ledger_entry SET case_reference = 'R-2' WHERE sequence = 7")),
        way(
            "the text of an entry is no JSON any more",
            "entry 7 altered: it is not sound JSON of an entry",
            h -> h.sql("UPDATE ledger_entry SET body = 'x' WHERE sequence = 7")),
        way(
            "spaces are put into the text of an entry",
            "entry 7 altered: it is not written as this ledger writes entries",
            h -> h.replace(7, "\"kind\":\"decision\"", "\"kind\": \"decision\"")),
        way(
            "a document is slipped in",
            "the ledger inserted: 1 kept document belongs to no entry",
            h -> h.keep(new byte[] {1, 2, 3})));
  }

  private static String workbook(Hands hands) {
    return hands
        .one("SELECT body FROM ledger_entry WHERE sequence = 2")
        .replaceFirst("(?s).*\"workbook\":\"(sha256:[0-9a-f]+)\".*", "$1");
  }

  private static String signature(Hands hands, int sequence) {
    return hands
        .one("SELECT body FROM ledger_entry WHERE sequence = " + sequence)
        .replaceFirst("(?s).*\"value\":\"([^\"]+)\".*", "$1");
  }

  private static String advice(Hands hands, int sequence) {
    return hands
        .one("SELECT body FROM ledger_entry WHERE sequence = " + sequence)
        .replaceFirst("(?s).*\"recommendation\":\"(sha256:[0-9a-f]+)\".*", "$1");
  }

  private static Arguments way(String what, String first, Consumer<Hands> hands) {
    return Arguments.of(what, first, hands);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("everywhere")
  @DisplayName("names the first entry that does not hold, and how")
  void namesTheFirst(
      String database, String what, String first, Consumer<Hands> tampering, @TempDir Path folder)
      throws IOException, SQLException {
    LedgerFile copy = whole(database).copyTo(folder);
    try {
      try (Hands hands = copy.hands()) {
        tampering.accept(hands);
      }
      Run run = copy.run("verify", "--checkpoint", copy.path("checkpoint.json"));
      assertThat(run.err()).isEmpty();
      assertThat(run.code()).isEqualTo(1);
      assertThat(run.out().replaceAll("\\n +", " ")).contains("\nFirst: " + first);
      assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
    } finally {
      copy.drop();
    }
  }

  @Test
  @DisplayName(
      "says in JSON what the schema says, and the same each time, though it runs in parallel")
  void json(@TempDir Path folder) throws IOException, SQLException {
    LedgerFile copy = whole("SQLite").copyTo(folder);
    try (Hands hands = copy.hands()) {
      hands.replace(5, "\"faults\":0", "\"faults\":1");
      hands.replace(6, "\"faults\":0", "\"faults\":2");
      hands.rechain(5);
    }
    Run run = copy.run("verify", "--format", "json");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).contains("\"entry\": 5").contains("\"entry\": 6");
    for (Run any : List.of(run, whole("SQLite").run("verify", "--format", "json"))) {
      try (InputStream in = TidyJson.class.getResourceAsStream("verification.schema.json")) {
        assertThat(
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in)
                    .validate(any.out(), InputFormat.JSON))
            .isEmpty();
      }
    }
    assertThat(copy.run("verify", "--format", "json").out()).isEqualTo(run.out());
  }

  @Test
  @DisplayName("is written as the golden files say, where it holds and where it does not")
  void golden(@TempDir Path folder) throws IOException, SQLException {
    LedgerFile copy = whole("SQLite").copyTo(folder);
    String checkpoint = copy.path("checkpoint.json");
    Golden.matches(
        "verify-holds.txt", masked(copy.run("verify", "--checkpoint", checkpoint).out()));
    try (Hands hands = copy.hands()) {
      hands.replace(8, OTHER_CONSTRUCT, "\"option\":\"oblong cup\",\"ranking\"");
      hands.rechain(8);
      hands.keep(new byte[] {1, 2, 3});
    }
    Golden.matches(
        "verify-altered.txt", masked(copy.run("verify", "--checkpoint", checkpoint).out()));
  }

  /** What differs from ledger to ledger. */
  static String masked(String text) {
    return text.replaceAll("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}", "<name of the ledger>")
        .replaceAll("sha256:[0-9a-f]{64}", "<digest>");
  }

  @Test
  @DisplayName("finds nothing in a ledger that was left alone, as file or with its checkpoint")
  void holds() {
    LedgerFile whole = whole("SQLite");
    Run run = whole.run("verify", "--checkpoint", whole.path("checkpoint.json"));
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Entries          11\nRecommendations  3\nSignatures       3\n")
        .endsWith("\nThe ledger holds\n");
    assertThat(run.code()).isZero();
    assertThat(whole.run("verify").out()).contains("! Without a checkpoint kept elsewhere");
  }

  @Test
  @DisplayName("is told what it checks by the same reading that an audit uses")
  void readsBack() {
    try (Ledger ledger =
            Ledger.open(LedgerAddress.of(whole("SQLite").address()), java.time.Clock.systemUTC());
        Stream<org.cotyla.ledger.Entry> entries = ledger.entries()) {
      assertThat(entries.map(entry -> entry.kind().word()))
          .containsExactly(
              "founding",
              "approval",
              "approval",
              "release",
              "recommendation",
              "recommendation",
              "decision",
              "decision",
              "outcome",
              "checkpoint",
              "recommendation");
    }
  }
}
