package org.cotyla.testcases.gaps;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.Sheets;

/**
 * Small random protocols of the kind of table that both analyses read: every cell is a constant
 * test, or nearly so. Two tables stand in a chain, so that the second sees only what the first can
 * give.
 */
final class PlainTables {

  private static final List<String> POLICIES = List.of("U", "A", "F", "P", "R", "C+");
  private static final List<String> GRADES = List.of("low", "middle", "very high");

  private final Random random;
  private int ids;

  private PlainTables(long seed) {
    this.random = new Random(seed);
  }

  /** The protocol of that seed: the same every time. */
  static Protocol of(long seed) {
    return new PlainTables(seed).protocol();
  }

  private Protocol protocol() {
    boolean inTheatre = random.nextInt(4) == 0;
    Sheets sheets =
        new Sheets()
            .field("width", "number", "[0..6]")
            .field("grade", "given", "choice", String.join(", ", GRADES), stage(inTheatre))
            .field("answer", "yes/no", "-")
            .field("note", "text", "-")
            .derived("load", "number", "-")
            .derived("class", "choice", String.join(", ", GRADES));
    table(sheets, "Load", List.of("width", "answer"), "load");
    String third = random.nextInt(5) == 0 ? "note" : "answer";
    table(sheets, "Class", List.of("load", "grade", third), "class");
    return sheets.protocol();
  }

  private static String stage(boolean inTheatre) {
    return inTheatre ? "theatre" : "-";
  }

  private void table(Sheets sheets, String name, List<String> inputs, String result) {
    boolean number = result.equals("load");
    String policy = number ? pick(POLICIES) : pick(POLICIES.subList(0, 5));
    policy = number && policy.equals("P") ? "F" : policy;
    policy = number && policy.equals("R") ? "U" : policy;
    List<String> rows = new ArrayList<>();
    int size = 1 + random.nextInt(5);
    for (int i = 0; i < size; i++) {
      StringBuilder row = new StringBuilder("R-" + ids++);
      inputs.forEach(input -> row.append('|').append(test(input)));
      rows.add(row.append('|').append(result(number)).toString());
    }
    if (random.nextInt(4) == 0) {
      rows.add("default" + "|-".repeat(inputs.size()) + "|" + result(number));
    }
    String when = String.join("|", inputs);
    sheets.decision(name, policy, "-", when, result, rows.toArray(String[]::new));
  }

  private String result(boolean number) {
    return number ? String.valueOf(2 * random.nextInt(4)) : pick(GRADES);
  }

  private String test(String input) {
    int dice = random.nextInt(10);
    if (dice < 3) {
      return "-";
    }
    return switch (input) {
      case "answer" -> pick(List.of("yes", "no"));
      case "note" -> pick(List.of("\"alpha\"", "\"beta\""));
      case "grade" -> dice < 4 ? "not(" + pick(GRADES) + ")" : grades(dice);
      default -> numbers(dice);
    };
  }

  private String grades(int dice) {
    if (dice == 5) {
      return pick(List.of("null, low", "low", "not(low)"));
    }
    return dice < 7 ? pick(GRADES) : pick(List.of("low, middle", "middle, very high"));
  }

  private String numbers(int dice) {
    int low = 1 + random.nextInt(3);
    int high = low + 1 + random.nextInt(2);
    return switch (dice) {
      case 3 -> "not(" + low + ")";
      case 4 -> "4, " + low;
      case 5, 6 -> pick(List.of("[", "(")) + low + ".." + high + pick(List.of("]", ")"));
      default -> pick(List.of("< ", "<= ", "> ", ">= ")) + low;
    };
  }

  private <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }
}
