package org.cotyla.testcases.retrospective;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Field;
import org.cotyla.testcases.house.Draw;
import org.cotyla.testcases.house.House;
import org.cotyla.testcases.house.OrdinaryCase;
import org.cotyla.testcases.house.PlausibleCases;

/**
 * Writes invented past cases with what was done: of a pool of different cases, each again and again
 * with another day, role and choice. About 3 in 4 did what the house protocol puts first.
 */
public final class PastCasesCsv {

  private static final LocalDate FIRST_DAY = LocalDate.of(2023, 1, 1);
  private static final List<String> ROLES =
      List.of("consultant", "consultant", "fellow", "registrar");

  private final List<String> headings = new ArrayList<>();
  private final List<Pooled> pool = new ArrayList<>();
  private final List<Field> fields = House.engine().protocol().givenFields();

  /** A case, and what the house protocol makes of it. */
  private record Pooled(List<String> cells, List<Choice> choices) {}

  /** The options of a ranking, best first. */
  private record Choice(List<String> options) {}

  /** A pool of so many different cases. */
  public PastCasesCsv(int different) {
    headings.addAll(
        List.of("case reference", "date", "role", "stage", "surgeon", "hospital number"));
    fields.forEach(field -> headings.add(heading(field)));
    House.engine().protocol().rankings().forEach(r -> headings.add(r.name() + " done"));
    for (int seed = 0; seed < different; seed++) {
      pool.add(pooled(PlausibleCases.drawn(seed)));
    }
  }

  /** The one length that most houses write in centimetres. */
  private static String heading(Field field) {
    return field.name().equals("hip centre migration") ? "migration (cm)" : field.name();
  }

  private Pooled pooled(OrdinaryCase drawn) {
    Recommendation advice =
        House.engine()
            .evaluate(
                Case.of(drawn.findings()).atStage(drawn.isInTheatre() ? "theatre" : "planning"));
    List<String> cells = new ArrayList<>();
    cells.add(drawn.isInTheatre() ? "theatre" : "planning");
    cells.add("Invented Name");
    cells.add("000-0000-000");
    fields.forEach(field -> cells.add(cell(field, drawn.get(field.name()))));
    return new Pooled(
        cells, advice.rankings().stream().map(PastCasesCsv::choice).collect(Collectors.toList()));
  }

  private static String cell(Field field, Object value) {
    if (value == null) {
      return "";
    }
    if (field.name().equals("hip centre migration")) {
      return new java.math.BigDecimal(value.toString()).movePointLeft(1).toPlainString();
    }
    return value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
  }

  private static Choice choice(RankingResult ranking) {
    return new Choice(ranking.options().stream().map(RankedOption::name).toList());
  }

  /** Writes so many rows; one in so many has a fault, none when that is 0. */
  public void write(Path file, long rows, int oneFaultIn) {
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      write(out, rows, oneFaultIn);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private void write(Writer out, long rows, int oneFaultIn) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    Draw draw = new Draw(rows);
    try (CSVPrinter csv = new CSVPrinter(out, format)) {
      csv.printRecord(headings);
      for (long row = 0; row < rows; row++) {
        Pooled pooled = pool.get((int) (row % pool.size()));
        boolean faulty = oneFaultIn > 0 && row % oneFaultIn == oneFaultIn - 1;
        csv.print("P-" + row / 10_000 + "-" + row % 10_000);
        csv.print(faulty ? "31.12.2024" : FIRST_DAY.plusDays(draw.between(0, 1000)).toString());
        csv.print(draw.oneOf(ROLES));
        for (String cell : pooled.cells()) {
          csv.print(cell);
        }
        for (Choice choice : pooled.choices()) {
          int taken = draw.percent(75) ? 0 : draw.between(0, choice.options().size() - 1);
          csv.print(draw.percent(1) ? "not listed" : choice.options().get(taken));
        }
        csv.println();
      }
    }
  }

  /** The arguments are the file, how many rows, and one fault in how many. */
  public static void main(String[] arguments) {
    new PastCasesCsv(2000)
        .write(Path.of(arguments[0]), Long.parseLong(arguments[1]), Integer.parseInt(arguments[2]));
  }
}
