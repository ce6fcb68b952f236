package org.cotyla.testcases.audit;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.assertj.core.data.Offset;
import org.cotyla.audit.AuditReport;
import org.cotyla.audit.AuditTables;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.ControlChart;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.audit.NamedCount;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.RankingAudit;
import org.cotyla.audit.Survival;
import org.cotyla.audit.Tally;
import org.cotyla.authoring.AuditWorkbook;
import org.cotyla.json.AuditJson;
import org.cotyla.ledger.Choice.Stood;
import org.cotyla.ledger.Ledger;
import org.cotyla.ledger.LedgerAddress;
import org.cotyla.ledgeraudit.LedgerAudit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** An audit of a generated ledger against a recount of what the generator wrote down beside it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LedgerAuditTest {

  private static final int DECISIONS = 3000;
  private static final LocalDate FROM = LocalDate.of(2024, 7, 1);
  private static final LocalDate TO = LocalDate.of(2026, 6, 30);

  private final List<JudgedDecision> judged = new ArrayList<>();
  private List<Fact> facts = List.of();
  private AuditReport report;
  private AuditReport period;

  @BeforeAll
  void fill(@TempDir Path folder) {
    Path file = folder.resolve("generated.ledger");
    facts = GeneratedLedger.fill(file, DECISIONS, 20261215);
    try (Ledger ledger = Ledger.open(LedgerAddress.ofFile(file), Clock.systemUTC())) {
      report = new LedgerAudit(Optional.empty(), Optional.empty(), judged::add).of(ledger);
      period = new LedgerAudit(Optional.of(FROM), Optional.of(TO)).of(ledger);
    }
  }

  private List<Fact> within() {
    return facts.stream()
        .filter(fact -> !fact.day().isBefore(FROM) && !fact.day().isAfter(TO))
        .toList();
  }

  private static long count(List<Fact> facts, Predicate<Fact> which) {
    return facts.stream().filter(Fact::advised).filter(which).count();
  }

  private RankingAudit construct(AuditReport of) {
    return of.rankings().stream()
        .filter(part -> part.ranking().equals("construct"))
        .findFirst()
        .orElseThrow();
  }

  private Map<String, Tally> by(RankingAudit part, Dimension dimension) {
    return part.breakdowns().stream()
        .filter(breakdown -> breakdown.by() == dimension)
        .flatMap(breakdown -> breakdown.lines().stream())
        .collect(Collectors.toMap(line -> line.value(), line -> line.tally()));
  }

  private static Map<String, Long> counted(List<Fact> facts, Function<Fact, String> by) {
    return facts.stream().collect(Collectors.groupingBy(by, Collectors.counting()));
  }

  @Test
  @DisplayName("Every decision is counted once, and those without advice are named")
  void everyDecision() {
    assertThat(report.decisions()).isEqualTo(DECISIONS);
    long unadvised = facts.stream().filter(fact -> !fact.advised()).count();
    assertThat(unadvised).isPositive();
    assertThat(report.whole().all().tally().unjudged()).isEqualTo(unadvised);
    assertThat(report.named())
        .filteredOn(named -> named.what().equals("decided without a recommendation before it"))
        .singleElement()
        .satisfies(named -> assertThat(named.count()).isEqualTo(unadvised));
  }

  @Test
  @DisplayName("Agreement with the first, the acceptable and the ruled out is that of the recount")
  void agreement() {
    for (AuditReport of : List.of(report, period)) {
      List<Fact> some = of == report ? facts : within();
      Tally tally = construct(of).all().tally();
      assertThat(tally.judged()).isEqualTo(count(some, fact -> true));
      assertThat(tally.first()).isEqualTo(count(some, fact -> fact.stood() == Stood.FIRST));
      assertThat(tally.ruledOut())
          .isEqualTo(count(some, fact -> fact.stood() == Stood.RULED_OUT))
          .isPositive();
      assertThat(tally.notRanked())
          .isEqualTo(count(some, fact -> fact.stood() == Stood.NOT_LISTED));
      assertThat(of.whole().all().tally().first())
          .isEqualTo(
              count(some, fact -> fact.stood() == Stood.FIRST && fact.bearing() == Stood.FIRST));
    }
    assertThat(period.decisions()).isEqualTo(within().size()).isLessThan(DECISIONS);
  }

  @Test
  @DisplayName("Counts by month, role, option, standing and missing data are those of the recount")
  void breakdowns() {
    List<Fact> advised = within().stream().filter(Fact::advised).toList();
    RankingAudit part = construct(period);
    Map<Dimension, Function<Fact, String>> questions =
        Map.of(
            Dimension.MONTH, fact -> YearMonth.from(fact.day()).toString(),
            Dimension.ROLE, Fact::role,
            Dimension.OPTION, Fact::construct,
            Dimension.STANDING, Fact::life,
            Dimension.MISSING, fact -> fact.missing() < 20 ? "" + fact.missing() : "20 or more");
    questions.forEach(
        (dimension, question) -> {
          Map<String, Tally> found = by(part, dimension);
          Map<String, Long> all = counted(advised, question);
          Map<String, Long> first =
              counted(
                  advised.stream().filter(fact -> fact.stood() == Stood.FIRST).toList(), question);
          assertThat(found.keySet()).as(dimension.word()).isEqualTo(all.keySet());
          found.forEach(
              (value, tally) -> {
                assertThat(tally.judged()).as(value).isEqualTo(all.get(value));
                assertThat(tally.first()).as(value).isEqualTo(first.getOrDefault(value, 0L));
              });
        });
  }

  @Test
  @DisplayName("The reasons of departures are those that were given")
  void reasons() {
    Map<String, Long> given =
        facts.stream()
            .filter(Fact::advised)
            .flatMap(fact -> fact.reason().stream())
            .collect(Collectors.groupingBy(reason -> reason, Collectors.counting()));
    assertThat(
            report.whole().reasons().stream()
                .collect(Collectors.toMap(NamedCount::name, NamedCount::count)))
        .isEqualTo(given);
  }

  @Test
  @DisplayName("The one month in which fewer followed lies beyond its control limits")
  void oddMonth() {
    assertThat(construct(report).byMonth().points().stream().filter(ControlChart.Point::isBeyond))
        .extracting(ControlChart.Point::name)
        .contains("2025-06");
  }

  @Test
  @DisplayName("Survival by construct is the product over a risk set that is counted anew")
  void survival() {
    long checked = 0;
    for (OutcomeCurve curve : report.outcomes()) {
      if (curve.ranking().equals("construct")) {
        List<Fact> followed =
            facts.stream().filter(fact -> fact.construct().equals(curve.option())).toList();
        assertThat(curve.survival().subjects()).isEqualTo(followed.size());
        double free = 1;
        for (Survival.Step step : curve.survival().steps()) {
          long events =
              followed.stream()
                  .filter(f -> f.event().isPresent() && days(f) == step.days())
                  .count();
          long atRisk = followed.stream().filter(f -> days(f) >= step.days()).count();
          free *= (double) (atRisk - events) / atRisk;
          assertThat(step.events()).isEqualTo(events);
          assertThat(step.atRisk()).isEqualTo(atRisk);
          assertThat(step.free()).isCloseTo(free, Offset.offset(1e-9));
          checked++;
        }
      }
    }
    assertThat(checked).isGreaterThan(50);
  }

  private static long days(Fact fact) {
    return ChronoUnit.DAYS.between(fact.day(), fact.end());
  }

  @Test
  @DisplayName("Totals gathered in parts and in another order are the same")
  void merging() {
    AuditTotals whole = new AuditTotals();
    judged.forEach(whole::add);
    List<JudgedDecision> shuffled = new ArrayList<>(judged);
    Collections.shuffle(shuffled, new Random(7));
    AuditTotals merged = new AuditTotals();
    for (int from = 0; from < shuffled.size(); from += 700) {
      AuditTotals part = new AuditTotals();
      shuffled.subList(from, Math.min(shuffled.size(), from + 700)).forEach(part::add);
      merged = part.merge(merged);
    }
    assertThat(merged).isEqualTo(whole);
    assertThat(AuditTotals.of(whole.counts())).isEqualTo(whole);
  }

  @Test
  @DisplayName("The JSON is laid out as its schema says, and the workbook is the same twice")
  void written() throws IOException {
    String json = AuditJson.write(report);
    try (InputStream schema = AuditJson.class.getResourceAsStream("audit.schema.json")) {
      Schema read =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(new String(schema.readAllBytes(), StandardCharsets.UTF_8));
      assertThat(read.validate(json, InputFormat.JSON)).isEmpty();
    }
    assertThat(AuditWorkbook.write(AuditTables.of(report)))
        .isEqualTo(AuditWorkbook.write(AuditTables.of(report)));
  }
}
