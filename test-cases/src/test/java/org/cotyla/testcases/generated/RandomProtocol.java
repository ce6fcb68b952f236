package org.cotyla.testcases.generated;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.cotyla.protocol.Protocol;

/**
 * Small random protocols, written as text so that the whole way from cells to answers is run: a few
 * given fields of all types, calculations, decisions in chains with every hit policy, and rankings
 * whose first place later decisions test.
 */
public final class RandomProtocol {

  private static final List<String> POLICIES =
      List.of("U", "A", "P", "F", "R", "O", "C", "C+", "C<", "C>", "C#");
  private static final List<String> VOTING = List.of("C", "C", "C", "R", "U", "A", "F");
  private static final List<String> TYPES =
      List.of("number", "number", "number", "choice", "choice", "yes/no", "text", "date");

  private final Random random;
  private final RandomCellTexts cells;
  private final Sheets sheets = new Sheets();
  private final List<RandomCellTexts.Name> known = new ArrayList<>();
  private final List<Runnable> decisions = new ArrayList<>();
  private final List<Runnable> calculations = new ArrayList<>();
  private int ids;

  private RandomProtocol(long seed) {
    this.random = new Random(seed);
    this.cells = new RandomCellTexts(random, known);
  }

  /** The protocol of that seed: the same every time. */
  public static Protocol of(long seed) {
    return sheets(seed).protocol();
  }

  public static Sheets sheets(long seed) {
    RandomProtocol protocol = new RandomProtocol(seed);
    protocol.write();
    return protocol.sheets;
  }

  /**
   * The protocol of that seed with a cell of some rows written anew, or a row left out: another
   * version with the same names.
   */
  public static Protocol changed(long seed, Random random) {
    return sheets(seed).changed(random).protocol();
  }

  private void write() {
    int given = 2 + random.nextInt(5);
    for (int i = 0; i < given; i++) {
      given(i, i < 2 ? TYPES.get(random.nextInt(2) * 4) : cells.pick(TYPES));
    }
    constant();
    int steps = 3 + random.nextInt(5);
    int rankings = 1 + random.nextInt(2);
    for (int i = 0; i < steps; i++) {
      if (i == 1 || (i == 3 && rankings == 2)) {
        ranking(i == 1 ? "plan" : "second plan");
      } else if (random.nextInt(3) == 0) {
        calculation(i);
      } else {
        decision(i);
      }
    }
    // The order of the sheets is not the order of need.
    Collections.shuffle(decisions, random);
    Collections.shuffle(calculations, random);
    calculations.forEach(Runnable::run);
    decisions.forEach(Runnable::run);
  }

  private void given(int number, String type) {
    String name = cells.nameOf(type, number);
    String stage = random.nextInt(6) == 0 ? "theatre" : "-";
    sheets.field(name, "given", type, cells.allowed(type), stage);
    known.add(new RandomCellTexts.Name(name, type));
  }

  private void constant() {
    int line = random.nextInt(6);
    calculations.add(() -> sheets.calculation("house line", String.valueOf(line)));
    known.add(new RandomCellTexts.Name("house line", "number"));
  }

  private void calculation(int number) {
    String name = "reckoned " + number;
    String expression = cells.numberFormula();
    calculations.add(() -> sheets.calculation(name, expression));
    known.add(new RandomCellTexts.Name(name, "number"));
  }

  private void ranking(String name) {
    List<String> options = new ArrayList<>();
    for (int i = 0; i < 2 + random.nextInt(3); i++) {
      options.add(name + " " + (char) ('a' + i));
    }
    options.forEach(option -> sheets.option(name, option));
    int voters = 1 + random.nextInt(2);
    for (int i = 0; i < voters; i++) {
      String when = inputs();
      String[] rows = rows(when, () -> cells.vote(options), 1 + random.nextInt(6));
      String policy = cells.pick(VOTING);
      String table = name + " votes " + i;
      decisions.add(() -> sheets.decision(table, policy, name, when, "option|effect|points", rows));
    }
    known.add(new RandomCellTexts.Name("first " + name, "first:" + String.join(",", options)));
  }

  private void decision(int number) {
    String policy = cells.pick(POLICIES);
    List<RandomCellTexts.Name> outputs = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      String type = outputType(policy, i);
      outputs.add(new RandomCellTexts.Name("result " + number + " of " + (char) ('a' + i), type));
      sheets.derived(outputs.get(i).name(), type, cells.derivedAllowed(type));
    }
    String when = inputs();
    int size = random.nextInt(10) == 0 ? 9 + random.nextInt(4) : 1 + random.nextInt(5);
    String[] rows = rows(when, () -> cells.results(outputs), size);
    List<String> all = new ArrayList<>(List.of(rows));
    if (random.nextInt(3) == 0) {
      all.add("default" + "|-".repeat(when.split("\\|").length) + "|" + cells.results(outputs));
    }
    String then = String.join("|", outputs.stream().map(RandomCellTexts.Name::name).toList());
    decisions.add(
        () ->
            sheets.decision(
                "Decision " + number, policy, "-", when, then, all.toArray(String[]::new)));
    if (!List.of("R", "O", "C").contains(policy)) {
      known.addAll(outputs);
    }
  }

  private String outputType(String policy, int number) {
    if (policy.length() > 1) {
      return "number";
    }
    boolean ordered = policy.equals("P") || policy.equals("O");
    return ordered && number == 0
        ? "choice"
        : cells.pick(List.of("choice", "choice", "number", "yes/no", "text"));
  }

  private String inputs() {
    List<String> inputs = new ArrayList<>();
    int count = 1 + random.nextInt(3);
    while (inputs.size() < count) {
      // The names of later steps are taken more often, so that decisions stand in chains.
      int from = random.nextBoolean() ? Math.max(0, known.size() - 4) : 0;
      inputs.add(known.get(from + random.nextInt(known.size() - from)).name());
    }
    return String.join("|", inputs);
  }

  private String[] rows(String when, java.util.function.Supplier<String> results, int count) {
    String[] rows = new String[count];
    for (int i = 0; i < count; i++) {
      StringBuilder row = new StringBuilder("R-" + ids++);
      for (String input : when.split("\\|")) {
        row.append('|').append(cells.test(input));
      }
      rows[i] = row.append('|').append(results.get()).toString();
    }
    return rows;
  }
}
