package org.cotyla.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.finite.Domain;
import org.cotyla.finite.Effort;
import org.cotyla.identity.ProtocolDigest;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Place;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Safeguard;

/**
 * Checks a protocol over all its cases. Immutable.
 *
 * <p>Every answer is exact over all complete cases, at every stage, or is said to be undecided.
 */
public final class ProtocolCheck {

  private static final long CASES_A_ROW = 2;
  private static final long CASES_AT_MOST = 4000;

  private final Engine engine;
  private final Protocol protocol;
  private final Effort effort;

  private ProtocolCheck(Engine engine, Effort effort) {
    this.engine = engine;
    this.protocol = engine.protocol();
    this.effort = effort;
  }

  /** A check that does as much as is usual. */
  public static ProtocolCheck of(Engine engine) {
    return new ProtocolCheck(engine, Effort.usual());
  }

  public static ProtocolCheck of(Engine engine, Effort effort) {
    return new ProtocolCheck(engine, effort);
  }

  /**
   * Everything that there is to say of the protocol.
   *
   * @param today the day against which its review date is held
   * @param progress told at the start and after each row and safeguard
   */
  public CheckReport run(LocalDate today, Progress progress) {
    Domain domain = Domain.of(protocol);
    SeenRows seen = seen(domain);
    List<Safeguard> safeguards = protocol.checks().safeguards();
    int rows = protocol.decisions().stream().mapToInt(table -> table.rows().size()).sum();
    int total = rows + safeguards.size();
    progress.at(0, total);
    AtomicInteger done = new AtomicInteger();
    Runnable step = () -> progress.at(done.incrementAndGet(), total);
    List<List<Remark>> tables =
        protocol.decisions().parallelStream()
            .map(table -> new TableCheck(engine, domain, table, effort, seen, step).run())
            .toList();
    SafeguardProof proof = new SafeguardProof(engine, domain, effort);
    List<SafeguardVerdict> verdicts =
        safeguards.parallelStream()
            .map(safeguard -> told(() -> proof.of(safeguard), step))
            .toList();
    List<Remark> remarks = new ArrayList<>();
    protocol.remarks().forEach(issue -> remarks.add(read(issue)));
    tables.forEach(remarks::addAll);
    Remarks whole = new Remarks();
    new BeyondAllowed(protocol, whole).check();
    new Idle(protocol, whole).check();
    new SafeguardRemarks(protocol, whole).add(verdicts);
    new ReviewDate(protocol.about(), whole).check(today);
    remarks.addAll(whole.list());
    remarks.addAll(WrittenCases.remarks(engine));
    List<Remark> judged = new Acceptances(protocol).apply(remarks);
    return new CheckReport(protocol, ProtocolDigest.of(protocol), sorted(judged), verdicts);
  }

  /**
   * What there is to say of some decision tables, without the rest of the protocol and before any
   * remark is accepted.
   *
   * @param tables decisions of this protocol
   */
  public List<Remark> tables(List<DecisionTable> tables) {
    Domain domain = Domain.of(protocol);
    SeenRows seen = new SeenRows();
    List<Remark> remarks = new ArrayList<>();
    tables.forEach(
        table ->
            remarks.addAll(new TableCheck(engine, domain, table, effort, seen, () -> {}).run()));
    return sorted(remarks);
  }

  /** Chance meets most rows of a table sooner than a search does. */
  private SeenRows seen(Domain domain) {
    SeenRows seen = new SeenRows();
    long cases = Math.min(CASES_AT_MOST, CASES_A_ROW * protocol.allRows().count());
    SplittableRandom random = new SplittableRandom(1);
    Engine remembering = engine.remembering();
    for (long i = 0; i < cases; i++) {
      seen.add(remembering.decide(domain.sample(protocol, random)));
    }
    return seen;
  }

  private static <T> T told(Supplier<T> work, Runnable step) {
    T result = work.get();
    step.run();
    return result;
  }

  /** A remark that was made when the workbook was read. */
  private Remark read(Issue issue) {
    return new Remark(issue, about(issue.place()), Optional.empty());
  }

  private String about(Place place) {
    return rowsAt(place).findFirst().orElse(place.plain());
  }

  /** The id of the row in whose line of the sheet the cell is. */
  private Stream<String> rowsAt(Place place) {
    return protocol.decisions().stream()
        .flatMap(ProtocolCheck::rows)
        .filter(row -> SameLine.of(row.at(), place))
        .map(org.cotyla.protocol.Row::id);
  }

  private static Stream<org.cotyla.protocol.Row> rows(DecisionTable table) {
    return Stream.concat(table.rows().stream(), table.otherwise().stream());
  }

  private static List<Remark> sorted(List<Remark> remarks) {
    return remarks.stream()
        .sorted(Comparator.comparing(remark -> remark.issue().severity()))
        .toList();
  }
}
