package org.cotyla.compile;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Expression;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.Issues;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureKind;
import org.cotyla.protocol.PictureRole;
import org.cotyla.value.ValueType;

/** The parts of pictures: each a role, and what is shown in it. */
final class PictureParts {

  private final CellParser parser;
  private final List<Field> numbers;
  private final List<DecisionTable> decisions;
  private final Issues issues;

  PictureParts(
      CellParser parser, List<Field> fields, List<DecisionTable> decisions, Issues issues) {
    this.parser = parser;
    this.numbers =
        fields.stream()
            .filter(field -> field.isGiven() && field.symbol().type() == ValueType.NUMBER)
            .toList();
    this.decisions = decisions;
    this.issues = issues;
  }

  Optional<Part> compile(Line line, PictureKind kind) {
    Text word = line.get("role");
    Optional<PictureRole> role = PictureRole.of(word.text(), kind.roles());
    if (role.isEmpty()) {
      issues.error(
          "W247",
          word.at(),
          "`" + word.text() + "` is not a role in a " + kind.word(),
          NearestWord.help(word.text(), kind.roles().stream().map(PictureRole::word).toList()));
      return Optional.empty();
    }
    Text cell = line.get("shows");
    Text label = line.get("label");
    return shown(cell, role.get())
        .map(shown -> new Part(role.get(), label.isNone() ? "" : label.text(), shown, cell.at()));
  }

  private Optional<Shown> shown(Text cell, PictureRole role) {
    return switch (role.wants()) {
      case FINDING -> finding(cell);
      case LIST -> list(cell);
      case NUMBER -> worked(cell, Optional.of(ValueType.NUMBER));
      case YES_NO -> worked(cell, Optional.of(ValueType.YES_NO));
      case ANYTHING -> worked(cell, Optional.empty());
    };
  }

  private Optional<Shown> finding(Text cell) {
    Optional<Shown> found =
        NameIndex.of(numbers, Field::name).find(cell.text()).map(Shown.Finding::new);
    return orFault(
        found, cell, "is not a given number", numbers.stream().map(Field::name).toList());
  }

  private Optional<Shown> list(Text cell) {
    List<DecisionTable> lists =
        decisions.stream()
            .filter(table -> table.hitPolicy().isList() && !table.votes())
            .filter(table -> !table.outputs().isEmpty())
            .toList();
    Optional<Shown> found =
        NameIndex.of(lists, PictureParts::output).find(cell.text()).map(Shown.Listed::new);
    return orFault(
        found,
        cell,
        "is not a list of a decision",
        lists.stream().map(PictureParts::output).toList());
  }

  private static String output(DecisionTable table) {
    return table.outputs().get(0).symbol().name();
  }

  private Optional<Shown> orFault(
      Optional<Shown> found, Text cell, String what, List<String> valid) {
    if (found.isEmpty()) {
      issues.error(
          "W248", cell.at(), "`" + cell.text() + "` " + what, NearestWord.help(cell.text(), valid));
    }
    return found;
  }

  private Optional<Shown> worked(Text cell, Optional<ValueType> wanted) {
    Expression formula;
    try {
      formula = parser.formula(cell.text());
    } catch (ExpressionException faulty) {
      issues.error("W249", cell.at(), faulty.line(), faulty.help());
      return Optional.empty();
    }
    if (wanted.filter(type -> type != formula.type()).isPresent()) {
      issues.error(
          "W249",
          cell.at(),
          "`" + cell.text() + "` gives a " + formula.type().word(),
          "the role needs a " + wanted.get().word());
      return Optional.empty();
    }
    Set<Symbol> used = formula.references();
    Optional<DecisionTable> list =
        decisions.stream()
            .filter(table -> table.hitPolicy().isList() && !table.votes())
            .filter(table -> table.gives().stream().anyMatch(used::contains))
            .findFirst();
    list.ifPresent(
        table ->
            issues.error(
                "W249",
                cell.at(),
                "`" + cell.text() + "` reads the list of `" + table.name() + "`",
                "a list is shown by the roles list and turn"));
    return list.isPresent() ? Optional.empty() : Optional.of(new Shown.Worked(formula));
  }
}
