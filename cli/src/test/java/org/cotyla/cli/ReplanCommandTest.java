package org.cotyla.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The command replan")
class ReplanCommandTest {

  private static final String PLAN = "{\"title\": \"Invented\", \"findings\": {\"crp\": 4}}";
  private static final String THEATRE = "{\"findings\": {\"purulence\": \"present\", \"crp\": 5}}";

  @TempDir private Path folder;

  @Test
  @DisplayName("lays theatre over the plan at the next stage, with the caution in the first line")
  void runs() throws IOException {
    Run run = Run.of("replan", file("plan.json", PLAN), file("theatre.json", THEATRE));
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .startsWith("Decision support for licensed surgeons.")
        .contains("Plan      planning, 1 of", "Now       theatre, 2 of")
        .contains("+ purulence: present\n", "! crp: 5 mg/L; this replaces the plan's 4 mg/L\n");
    assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  @Test
  @DisplayName(
      "takes the plan as a case, as a form or as the recommendation on it, and says the same")
  void takesEachKindOfPlan() throws IOException {
    String theatre = file("theatre.json", THEATRE);
    String blank = folder.resolve("plan.xlsx").toString();
    Run.of("blank-case", "--format", "xlsx", "--output", blank);
    String empty = file("empty.json", "{\"findings\": {}}");
    Run advice = Run.of("recommend", empty, "--format", "json");
    Run fromCase = Run.of("replan", empty, theatre);
    assertThat(Run.of("replan", file("advice.json", advice.out()), theatre)).isEqualTo(fromCase);
    assertThat(Run.of("replan", blank, theatre)).isEqualTo(fromCase);
  }

  @Test
  @DisplayName("says plainly when the recommendation was made with another protocol")
  void otherProtocol() throws IOException {
    String advice = Run.of("recommend", file("plan.json", PLAN), "--format", "json").out();
    String other = advice.replaceFirst("\"digest\": \"sha256:.", "\"digest\": \"sha256:x");
    Run run = Run.of("replan", file("other.json", other), file("theatre.json", THEATRE));
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("! The plan was made with another protocol");
  }

  @Test
  @DisplayName("lists the faults of both files, each with its file, and answers nothing")
  void listsFaults() throws IOException {
    String plan = file("plan.json", "{\"findings\": {\"crp\": \"high\"}}");
    String theatre = file("theatre.json", "{\"findings\": {\"purulence\": \"some\"}}");
    assertThat(Run.of("replan", plan, theatre))
        .isEqualTo(
            new Run(
                1,
                "",
                """
                error C004 plan.json: case field `crp`: `high` is not a number
                      help: write a number in mg/L
                error C005 theatre.json: case field `purulence`: `some` is not a value of it
                      help: did you mean `none`? (none, present, explained by metal debris)
                2 errors; nothing was done
                """));
    assertThat(Run.of("replan", file("broken.json", "{"), theatre).err())
        .startsWith("error C020 broken.json: case: the text ends");
  }

  @Test
  @DisplayName("answers in JSON, laid out as the schema says, when that is asked for")
  void json() throws IOException {
    Run run =
        Run.of(
            "replan", file("plan.json", PLAN), file("theatre.json", THEATRE), "--format", "json");
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("{\n  \"format\": 1,\n").contains("\"restated\": [");
    assertThat(ReplanJsonTest.schema().validate(run.out(), InputFormat.JSON)).isEmpty();
  }

  @Test
  @DisplayName("answers wrong usage with two lines, and explains itself within 80 columns")
  void usage() {
    assertThat(Run.of("replan", "plan.json").code()).isEqualTo(2);
    assertThat(Run.of("replan", "a", "b", "--width", "3").err())
        .startsWith("error: --width is a number from 40");
    assertThat(Run.of("replan", "no such plan", "b").err()).startsWith("error: cannot read");
    Run help = Run.of("replan", "--help");
    assertThat(help.out()).startsWith("Usage: cotyla replan");
    assertThat(help.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }
}
