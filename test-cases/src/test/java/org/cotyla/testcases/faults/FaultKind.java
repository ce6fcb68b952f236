package org.cotyla.testcases.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Row;
import org.cotyla.expression.Symbol;
import org.cotyla.testcases.faults.DecisionTab.Place;
import org.cotyla.testcases.house.House;

/** The small faults that a hand makes in a workbook. */
enum FaultKind {
  THRESHOLD_CHANGED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return over(tests(copy), random, text -> BOUND, "$1$2 + " + (1 + random.nextInt(5)));
    }
  },
  EDGE_TAKEN_IN_OR_OUT {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(tests(copy).stream().filter(cell -> EDGE.matcher(cell.text()).find()), random)
          .map(cell -> cell.type(otherEdge(cell.text())));
    }
  },
  INTERVAL_MOVED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      String bounds = random.nextBoolean() ? "$1$2 + 2$3" : "$1$2 - 2$3";
      return over(tests(copy), random, text -> INTERVAL, bounds);
    }
  },
  LIST_NARROWED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(tests(copy).stream().filter(FaultKind::isList), random)
          .map(cell -> cell.type(without(cell.text(), random)));
    }
  },
  LIST_WIDENED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return another(copy.decisions(), "when", random, (text, value) -> text + ", " + value);
    }
  },
  TEST_VALUE_SWAPPED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return another(copy.decisions(), "when", random, (text, value) -> value);
    }
  },
  WORD_MISSPELT {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(
              copy.decisions().stream()
                  .flatMap(tab -> choiceCells(tab, random.nextBoolean() ? "when" : "then")),
              random)
          .map(cell -> cell.type(misspelt(cell.text(), random)));
    }
  },
  ALLOWED_VALUE_DROPPED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return allowed(copy, random, text -> without(text, random));
    }
  },
  ALLOWED_VALUE_MISSPELT {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return allowed(copy, random, text -> misspelt(text, random));
    }
  },
  ROW_DELETED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      Optional<Row> row = rule(copy, random);
      String what = row.map(rule -> Copy.text(rule, 0) + " is gone").orElse("");
      row.ifPresent(rule -> rule.getSheet().removeRow(rule));
      return row.map(rule -> what);
    }
  },
  OUTCOME_SWAPPED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return another(copy.decisions(), "then", random, (text, value) -> value);
    }
  },
  OPTION_SWAPPED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      List<String> options = copy.lines("Options").stream().map(row -> Copy.text(row, 1)).toList();
      return pick(voting(copy, "option"), random)
          .map(cell -> cell.type(other(options, cell.text(), random)));
    }
  },
  POINTS_CHANGED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(voting(copy, "points").filter(cell -> cell.text().matches("\\d+")), random)
          .map(cell -> cell.type((Integer.parseInt(cell.text()) + 1 + random.nextInt(3)) + ""));
    }
  },
  EFFECT_TURNED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(voting(copy, "effect"), random)
          .map(cell -> cell.type(cell.text().equals("favour") ? "oppose" : "favour"));
    }
  },
  ID_REPEATED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      Optional<Row> other = rule(copy, random);
      return rule(copy, random)
          .filter(row -> !Copy.text(row, 0).equals(Copy.text(other.orElseThrow(), 0)))
          .map(row -> Copy.type(row, 0, Copy.text(other.orElseThrow(), 0)));
    }
  },
  TEST_EMPTIED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(tests(copy).stream(), random).map(cell -> cell.type("-"));
    }
  },
  ROWS_SWAPPED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      return pick(copy.decisions().stream().filter(tab -> tab.policy().equals("F")), random)
          .filter(tab -> tab.rules().size() > 1)
          .map(tab -> swapped(tab, random.nextInt(tab.rules().size() - 1)));
    }
  },
  CONSTANT_CHANGED {
    @Override
    Optional<String> put(Copy copy, Random random) {
      int at = copy.column("Calculations", "expression");
      return pick(
              copy.lines("Calculations").stream()
                  .filter(row -> Copy.text(row, at).matches("\\d+(\\.\\d+)?")),
              random)
          .map(row -> Copy.type(row, at, Copy.text(row, at) + " + " + (1 + random.nextInt(3))));
    }
  };

  private static final Pattern BOUND = Pattern.compile("^([<>≤≥]=? *)([^,]+)$");
  private static final Pattern EDGE = Pattern.compile("^[<>]=? *[^,]+$");
  private static final Pattern INTERVAL = Pattern.compile("^([\\[(].+\\.\\.)(.+)([\\])])$");

  /** Makes one such fault and says what it is; nothing when there is no place for it. */
  abstract Optional<String> put(Copy copy, Random random);

  private static List<Place> tests(Copy copy) {
    return copy.decisions().stream()
        .flatMap(tab -> tab.cells("when").stream())
        .filter(cell -> !cell.text().equals("-"))
        .toList();
  }

  private static Optional<String> over(
      List<Place> cells, Random random, Function<String, Pattern> pattern, String by) {
    return pick(
            cells.stream().filter(cell -> pattern.apply(cell.text()).matcher(cell.text()).find()),
            random)
        .map(
            cell -> {
              Matcher matcher = pattern.apply(cell.text()).matcher(cell.text());
              return cell.type(matcher.replaceFirst(by));
            });
  }

  private static String otherEdge(String text) {
    return text.charAt(1) == '='
        ? text.charAt(0) + text.substring(2)
        : text.charAt(0) + "=" + text.substring(1);
  }

  private static boolean isList(Place cell) {
    return cell.text().contains(", ") && !cell.text().contains("(");
  }

  private static String without(String list, Random random) {
    List<String> words = new ArrayList<>(List.of(list.split(", *")));
    words.remove(random.nextInt(words.size()));
    return String.join(", ", words);
  }

  /** Two neighbouring letters change places, or one is left out where they are alike. */
  private static String misspelt(String text, Random random) {
    int at = random.nextInt(Math.max(1, text.length() - 1));
    String turned =
        text.length() < 2
            ? text + "x"
            : text.substring(0, at)
                + text.charAt(at + 1)
                + text.charAt(at)
                + text.substring(at + 2);
    return turned.equals(text) ? text.substring(0, at) + text.substring(at + 1) : turned;
  }

  private static List<String> choices(String name) {
    Optional<Symbol> symbol = House.engine().protocol().vocabulary().symbol(name);
    return symbol.map(one -> one.isChoice() ? one.choices() : List.<String>of()).orElse(List.of());
  }

  private static java.util.stream.Stream<Place> choiceCells(DecisionTab tab, String part) {
    return tab.cells(part).stream()
        .filter(cell -> choices(tab.name(cell.column())).size() > 1)
        .filter(cell -> choices(tab.name(cell.column())).containsAll(words(cell.text())));
  }

  private static List<String> words(String list) {
    return List.of(list.split(", *"));
  }

  private static Optional<String> another(
      List<DecisionTab> tabs,
      String part,
      Random random,
      java.util.function.BinaryOperator<String> typed) {
    record Wide(Place cell, List<String> left) {}
    List<Wide> all =
        tabs.stream()
            .flatMap(
                tab ->
                    choiceCells(tab, part)
                        .map(
                            cell -> {
                              List<String> left = new ArrayList<>(choices(tab.name(cell.column())));
                              left.removeAll(words(cell.text()));
                              return new Wide(cell, left);
                            }))
            .filter(wide -> !wide.left().isEmpty())
            .toList();
    return pick(all.stream(), random)
        .map(
            wide -> {
              String value = wide.left().get(random.nextInt(wide.left().size()));
              return wide.cell().type(typed.apply(wide.cell().text(), value));
            });
  }

  private static Optional<String> allowed(Copy copy, Random random, Function<String, String> by) {
    int type = copy.column("Fields", "type");
    int at = copy.column("Fields", "allowed");
    return pick(
            copy.lines("Fields").stream().filter(row -> Copy.text(row, type).equals("choice")),
            random)
        .map(row -> Copy.type(row, at, by.apply(Copy.text(row, at))));
  }

  private static Optional<Row> rule(Copy copy, Random random) {
    return pick(copy.decisions().stream().flatMap(tab -> tab.rules().stream()), random);
  }

  private static java.util.stream.Stream<Place> voting(Copy copy, String name) {
    return copy.decisions().stream()
        .flatMap(
            tab -> tab.cells((part, named) -> part.equals("then") && named.equals(name)).stream())
        .filter(cell -> !cell.text().isEmpty());
  }

  private static String other(List<String> words, String word, Random random) {
    List<String> others = words.stream().filter(one -> !one.equals(word)).toList();
    return others.get(random.nextInt(others.size()));
  }

  private static String swapped(DecisionTab tab, int at) {
    Row one = tab.rules().get(at);
    Row other = tab.rules().get(at + 1);
    String ids = Copy.text(one, 0) + " and " + Copy.text(other, 0) + " change places";
    for (int column = 0; column < tab.width(); column++) {
      String text = Copy.text(one, column);
      Copy.type(one, column, Copy.text(other, column));
      Copy.type(other, column, text);
    }
    return ids;
  }

  private static <T> Optional<T> pick(java.util.stream.Stream<T> among, Random random) {
    List<T> all = among.collect(Collectors.toList());
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
  }

  /** In words. */
  String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
