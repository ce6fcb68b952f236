package org.cotyla.caseform;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.workbook.FormSheet;

/** From the text of a form to the case that it states. */
final class FilledForm {

  private static final int LONGEST_TITLE = 10_000;

  private final FormSheet form;
  private final Issues issues = new Issues();

  FilledForm(FormSheet form) {
    this.form = form;
  }

  Case toCase() {
    List<Case.Finding> findings = new ArrayList<>();
    for (Line line : form.lines()) {
      finding(line).ifPresent(findings::add);
    }
    String title = key(CaseForm.TITLE).map(this::title).orElse("");
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    Optional<Text> stage = key(CaseForm.STAGE);
    return new Case(
        title,
        stage.map(Text::text),
        findings,
        stage.<Place>map(Text::at).orElse(new Place.InCase("")));
  }

  private Optional<Text> key(String key) {
    return Optional.ofNullable(form.keys().get(key)).filter(text -> !text.isBlank());
  }

  private String title(Text title) {
    if (title.text().length() > LONGEST_TITLE) {
      issues.error("C025", title.at(), "the title is very long", "at most " + LONGEST_TITLE);
    }
    return title.text();
  }

  /** A row without a value is a finding that is not recorded, a heading or somebody's note. */
  private Optional<Case.Finding> finding(Line line) {
    Text name = line.get(CaseForm.FINDING);
    Text value = line.get(CaseForm.VALUE);
    if (value.isNone()) {
      return Optional.empty();
    }
    if (name.isBlank()) {
      issues.error(
          "C040",
          value.at(),
          "a value stands here, but no finding beside it",
          "notes may stand anywhere but in the column `" + CaseForm.VALUE + "`");
      return Optional.empty();
    }
    Optional<String> unit =
        Optional.of(line.get(CaseForm.UNIT))
            .filter(text -> !text.isNone() && !text.text().equals("1"))
            .map(Text::text);
    return Optional.of(
        new Case.Finding(name.text(), new Given.Written(value.text(), unit), value.at()));
  }
}
