package org.cotyla.compile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.TableDraft;
import org.cotyla.draft.Text;
import org.cotyla.issue.CellRef;
import org.cotyla.issue.Issues;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.TestCase;
import org.cotyla.protocol.TestCase.Expected;
import org.cotyla.protocol.TestCase.Stated;

/**
 * The Cases sheet. What a case states is only found by its field here; its values are read when the
 * case is run.
 */
final class CaseCompiler {

  private final NameIndex<Field> given;
  private final List<String> givenNames;
  private final Expectable expectable;
  private final Issues issues;
  private final Map<String, CellRef> names = new HashMap<>();

  CaseCompiler(List<Field> fields, Expectable expectable, Issues issues) {
    List<Field> asked = fields.stream().filter(Field::isGiven).toList();
    this.given = NameIndex.of(asked, Field::name);
    this.givenNames = asked.stream().map(Field::name).toList();
    this.expectable = expectable;
    this.issues = issues;
  }

  List<TestCase> compile(TableDraft draft) {
    List<Optional<Field>> fields = draft.namesUnder("given").stream().map(this::field).toList();
    List<Optional<Expectable.Subject>> subjects =
        draft.namesUnder("expect").stream().map(expectable::subject).toList();
    return draft.rows().stream().map(row -> testCase(row, fields, subjects)).toList();
  }

  private Optional<Field> field(Text name) {
    Optional<Field> field = given.find(name.text());
    if (field.isEmpty() && !name.isBlank()) {
      issues.error(
          "W220",
          name.at(),
          "`" + name.text() + "` is not a field that a case states",
          NearestWord.to(name.text(), givenNames)
              .map(nearest -> "did you mean `" + nearest + "`?"));
    }
    return field;
  }

  private TestCase testCase(
      TableDraft.Row row,
      List<Optional<Field>> fields,
      List<Optional<Expectable.Subject>> subjects) {
    name(row.key());
    List<Stated> stated = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      Text cell = row.under("given").get(i);
      if (!cell.isNone()) {
        fields.get(i).ifPresent(field -> stated.add(new Stated(field, cell.text(), cell.at())));
      }
    }
    List<Expected> expected = new ArrayList<>();
    boolean expectsSomething = false;
    for (int i = 0; i < subjects.size(); i++) {
      Text cell = row.under("expect").get(i);
      expectsSomething |= !cell.isNone();
      if (!cell.isNone()) {
        subjects
            .get(i)
            .flatMap(subject -> expectable.values(subject, cell))
            .ifPresent(expected::add);
      }
    }
    if (!expectsSomething) {
      issues.error(
          "W223",
          row.key().at(),
          "case `" + row.key().text() + "` expects nothing",
          "write under `expect` what the answer should be");
    }
    Text stage = row.get("stage");
    return new TestCase(
        row.key().text(),
        stage.isNone() ? Optional.empty() : Optional.of(stage.text()),
        stage.at(),
        stated,
        expected,
        row.get("because").isNone() ? "" : row.get("because").text(),
        row.key().at());
  }

  private void name(Text name) {
    CellRef earlier = names.putIfAbsent(Names.key(name.text()), name.at());
    if (earlier != null && !name.isBlank()) {
      issues.error(
          "W224",
          name.at(),
          "the case `" + name.text() + "` already stands at " + earlier.plain(),
          "give one of the two another name");
    }
  }
}
