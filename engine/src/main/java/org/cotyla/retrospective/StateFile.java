package org.cotyla.retrospective;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.cotyla.audit.AgainstRuleOut;
import org.cotyla.audit.AuditTotals;
import org.cotyla.audit.Dimension;
import org.cotyla.audit.Tally;

/** Keeps the state of a run as CSV, whole or not at all, sealed by a digest in its last line. */
final class StateFile {

  private static final String FORMAT_NAME = "cotyla retrospective state";
  private static final String VERSION = "2";
  private static final long MOST_BYTES = 256L << 20;
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

  private StateFile() {}

  /** Writes beside the file first, and takes its place only when all of it is on the disk. */
  static void write(Path file, RunState state) throws IOException {
    String text = text(state);
    byte[] bytes = (text + "end," + RowDigest.of(text) + "\n").getBytes(StandardCharsets.UTF_8);
    Path half = file.resolveSibling(file.getFileName() + ".part");
    try (FileChannel channel =
        FileChannel.open(
            half,
            StandardOpenOption.WRITE,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
    Files.move(half, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  private static String text(RunState state) {
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, FORMAT)) {
      csv.printRecord(FORMAT_NAME, VERSION);
      csv.printRecord("inputs", state.inputs());
      RunCounts counts = state.counts();
      csv.printRecord(
          "counts", counts.read(), counts.judged(), counts.setAside(), counts.reasons());
      csv.printRecord("rows", state.rows());
      csv.printRecord("set aside", state.setAsideBytes());
      totals(csv, "total", state.totals());
      for (AgainstRuleOut one : state.againstRuleOuts()) {
        csv.printRecord(
            "against",
            one.place(),
            one.reference(),
            one.day(),
            one.role(),
            one.ranking(),
            one.chosen(),
            one.first(),
            String.join(" ", one.ruledOutBy()),
            one.reason(),
            one.because());
      }
      if (state.draft().isPresent()) {
        Tallied.Draft draft = state.draft().get();
        csv.printRecord("draft");
        totals(csv, "draft total", draft.totals());
        for (var change : draft.changes().counts().entrySet()) {
          DraftChanges.Key key = change.getKey();
          csv.printRecord("change", key.kind(), key.ranking(), key.value(), change.getValue());
        }
        for (DraftChanges.Example one : draft.changes().examples()) {
          csv.printRecord("example", one.row(), one.ranking(), one.reference(), one.change());
        }
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static void totals(CSVPrinter csv, String kind, AuditTotals totals) throws IOException {
    for (AuditTotals.Count count : totals.counts()) {
      Tally tally = count.tally();
      csv.printRecord(
          kind,
          count.dimension().name(),
          count.ranking(),
          count.name(),
          count.value(),
          tally.first(),
          tally.acceptable(),
          tally.ruledOut(),
          tally.notRanked(),
          tally.unjudged());
    }
  }

  /** The state; nothing when the file is no whole state file. */
  static Optional<RunState> read(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      return Optional.empty();
    }
    String whole = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    int end = whole.lastIndexOf("end,");
    if (end < 0
        || !whole.substring(end).equals("end," + RowDigest.of(whole.substring(0, end)) + "\n")) {
      return Optional.empty();
    }
    try (CSVParser parser = CSVParser.parse(whole.substring(0, end), FORMAT)) {
      return parsed(parser.getRecords());
    } catch (RuntimeException otherFormat) {
      return Optional.empty();
    }
  }

  private static Optional<RunState> parsed(List<CSVRecord> lines) {
    if (!lines.get(0).get(0).equals(FORMAT_NAME) || !lines.get(0).get(1).equals(VERSION)) {
      return Optional.empty();
    }
    String inputs = "";
    String rows = "";
    long setAside = 0;
    RunCounts counts = RunCounts.NONE;
    List<AuditTotals.Count> totals = new ArrayList<>();
    List<AgainstRuleOut> againstRuleOuts = new ArrayList<>();
    List<AuditTotals.Count> draftTotals = new ArrayList<>();
    DraftChanges changes = new DraftChanges();
    boolean draft = false;
    for (CSVRecord line : lines) {
      switch (line.get(0)) {
        case "inputs" -> inputs = line.get(1);
        case "rows" -> rows = line.get(1);
        case "set aside" -> setAside = number(line, 1);
        case "counts" ->
            counts =
                new RunCounts(number(line, 1), number(line, 2), number(line, 3), number(line, 4));
        case "total" -> totals.add(count(line));
        case "against" -> againstRuleOuts.add(againstRuleOut(line));
        case "draft" -> draft = true;
        case "draft total" -> draftTotals.add(count(line));
        case "change" ->
            changes.add(
                new DraftChanges.Key(
                    DraftChanges.Kind.valueOf(line.get(1)), line.get(2), line.get(3)),
                number(line, 4));
        case "example" ->
            changes.add(
                new DraftChanges.Example(number(line, 1), line.get(2), line.get(3), line.get(4)));
        default -> {}
      }
    }
    return Optional.of(
        new RunState(
            inputs,
            counts,
            rows,
            setAside,
            AuditTotals.of(totals),
            againstRuleOuts,
            draft
                ? Optional.of(new Tallied.Draft(AuditTotals.of(draftTotals), changes))
                : Optional.empty()));
  }

  private static AgainstRuleOut againstRuleOut(CSVRecord line) {
    return new AgainstRuleOut(
        line.get(1),
        line.get(2),
        line.get(3),
        line.get(4),
        line.get(5),
        line.get(6),
        line.get(7),
        line.get(8).isEmpty() ? List.of() : List.of(line.get(8).split(" ")),
        line.get(9),
        line.get(10));
  }

  private static AuditTotals.Count count(CSVRecord line) {
    return new AuditTotals.Count(
        Dimension.valueOf(line.get(1)),
        line.get(2),
        line.get(3),
        line.get(4),
        new Tally(
            number(line, 5), number(line, 6), number(line, 7), number(line, 8), number(line, 9)));
  }

  private static long number(CSVRecord line, int index) {
    return Long.parseLong(line.get(index));
  }
}
