package org.cotyla.testcases.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** The texts of random cells: tests, results, formulas and votes over the names known so far. */
final class RandomCellTexts {

  /**
   * A name that cells may use; what a ranking puts first has the type {@code first:} and options.
   */
  record Name(String name, String type) {
    List<String> choices() {
      return switch (type) {
        case "choice" -> List.of("low", "middle", "very high");
        case "yes/no" -> List.of("yes", "no");
        case "text" -> List.of("\"alpha\"", "\"beta gamma\"");
        case "date" -> List.of("2026-01-02", "2026-01-04", "date(\"2026-01-05\")");
        default -> type.startsWith("first:") ? List.of(type.substring(6).split(",")) : List.of();
      };
    }
  }

  private final Random random;
  private final List<Name> known;

  RandomCellTexts(Random random, List<Name> known) {
    this.random = random;
    this.known = known;
  }

  <T> T pick(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  String nameOf(String type, int number) {
    return switch (type) {
      case "number" -> "sh\u00e4ft-like width " + number;
      case "choice" -> "grade " + number;
      case "yes/no" -> "answer_" + number;
      case "text" -> "note " + number;
      default -> "day " + number;
    };
  }

  String allowed(String type) {
    return switch (type) {
      case "number" -> "[0..6]";
      case "choice" -> "low, middle, very high";
      case "date" -> "[2026-01-01..2026-01-06]";
      default -> "-";
    };
  }

  String derivedAllowed(String type) {
    return type.equals("choice") ? allowed(type) : "-";
  }

  private int threshold() {
    return 2 * random.nextInt(4);
  }

  private List<String> others(String type) {
    return known.stream().filter(name -> name.type().equals(type)).map(Name::name).toList();
  }

  String test(String input) {
    Name name = known.stream().filter(k -> k.name().equals(input)).findFirst().orElseThrow();
    int dice = random.nextInt(12);
    if (dice < 2) {
      return "-";
    }
    if (dice == 2) {
      return pick(List.of("null", "not(null)", "null, " + value(name), "!= " + value(name)));
    }
    if (dice < 5) {
      return "not(" + value(name) + (random.nextBoolean() ? "" : ", " + value(name)) + ")";
    }
    if (name.type().equals("number")) {
      return numberTest();
    }
    if (name.type().equals("date") && dice < 10) {
      return pick(List.of("< ", "<= ", "> ", ">= ")) + pick(name.choices());
    }
    List<String> same = others(name.type());
    boolean reference = dice == 11 && !same.isEmpty();
    return reference ? pick(same) : value(name) + (random.nextBoolean() ? "" : ", " + value(name));
  }

  private String value(Name name) {
    return name.type().equals("number") ? String.valueOf(threshold()) : pick(name.choices());
  }

  private String numberTest() {
    String relation = pick(List.of("< ", "<= ", "> ", ">= ", "\u2264", "\u2265 "));
    int low = threshold();
    return switch (random.nextInt(7)) {
      case 0 -> "[" + low + ".." + (low + 2) + "]";
      case 1 -> "(" + low + ".." + (low + 3) + "]";
      case 2 -> "]" + low + ".." + (low + 2) + "[, " + threshold();
      case 3 -> relation + pick(others("number"));
      case 4 -> relation + "(" + numberFormula() + ")";
      default -> relation + threshold();
    };
  }

  String numberFormula() {
    List<String> numbers = others("number");
    String a = pick(numbers);
    String b = random.nextInt(3) == 0 ? String.valueOf(threshold()) : pick(numbers);
    List<String> answers = new ArrayList<>(others("yes/no"));
    return switch (random.nextInt(11)) {
      case 0, 1 -> a + " + " + b;
      case 2 -> a + " - " + b;
      case 3 -> "max(" + a + ", " + b + ") - 1";
      case 4 -> a + " / " + b;
      case 5 -> a + " * 2 - " + b;
      case 6 -> "round half up(" + a + " / 3, 0)";
      case 7 -> "abs(" + a + " - " + b + ")";
      case 8 -> "min(" + a + ", " + b + ") + 0.5";
      case 9 -> a + " * " + b;
      default ->
          answers.isEmpty()
              ? "if " + a + " > " + b + " then " + a + " else null"
              : "if " + pick(answers) + " then " + a + " else " + b;
    };
  }

  String results(List<Name> outputs) {
    List<String> results = new ArrayList<>();
    for (Name output : outputs) {
      List<String> same = others(output.type());
      boolean reference = random.nextInt(5) == 0 && !same.isEmpty();
      if (random.nextInt(12) == 0) {
        results.add("null");
      } else if (output.type().equals("number")) {
        results.add(reference ? numberFormula() : String.valueOf(threshold()));
      } else if (output.type().equals("text")) {
        results.add(pick(List.of("alpha", "beta gamma", "delta")));
      } else {
        results.add(reference ? pick(same) : pick(output.choices()));
      }
    }
    return String.join("|", results);
  }

  String vote(List<String> options) {
    String effect = pick(List.of("favour", "favour", "oppose", "rule out"));
    String points = pick(List.of("1", "2", "3", "0.5", "2"));
    return pick(options) + "|" + effect + "|" + (effect.equals("rule out") ? "-" : points);
  }
}
