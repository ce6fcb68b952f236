package org.cotyla.caseform;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.cotyla.finding.Case;
import org.cotyla.finding.FindingsReader;
import org.cotyla.finding.Given;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.Interval;
import org.cotyla.value.Value;

@Label("A case written into a form by hand")
class FormRoundTripLawTest {

  private static final Protocol PROTOCOL = SeedlingProtocol.protocol();

  /** What a case says of a field, and how a person writes that into the form. */
  record Statement(Field field, Given given, Object value, String unit) {}

  @Property(tries = 250)
  @Label("gives the same findings as the case itself")
  void sameFindings(@ForAll("statements") List<Statement> statements) {
    List<Case.Finding> findings = new ArrayList<>();
    statements.forEach(one -> findings.add(new Case.Finding(one.field().name(), one.given())));
    Case direct = new Case("some bed", Optional.of("potting"), findings);
    Case read =
        Filled.read(
            form -> {
              form.cell("case title", 1).setCellValue("some bed");
              form.cell("stage", 1).setCellValue("potting");
              statements.forEach(one -> write(form, one));
            });
    FindingsReader reader = new FindingsReader(PROTOCOL);
    assertThat(reader.read(read).data()).isEqualTo(reader.read(direct).data());
    assertThat(read.title()).isEqualTo("some bed");
  }

  private static void write(Filled form, Statement statement) {
    String name = statement.field().name();
    if (!statement.unit().isEmpty()) {
      form.unit(name, statement.unit());
    }
    if (statement.value() instanceof BigDecimal number) {
      form.value(name, number.doubleValue());
    } else if (statement.value() instanceof LocalDate day) {
      form.cell(name, 1).setCellValue(day);
    } else if (statement.value() instanceof Boolean yes) {
      form.cell(name, 1).setCellValue(yes);
    } else {
      form.value(name, statement.value().toString());
    }
  }

  @Provide
  Arbitrary<List<Statement>> statements() {
    List<Arbitrary<Optional<Statement>>> all = new ArrayList<>();
    PROTOCOL.givenFields().forEach(field -> all.add(statement(field).optional()));
    return Combinators.combine(all)
        .as(chosen -> chosen.stream().flatMap(Optional::stream).toList());
  }

  private static Arbitrary<Statement> statement(Field field) {
    return switch (field.symbol().type()) {
      case NUMBER -> number(field);
      case YES_NO ->
          Arbitraries.of(true, false)
              .flatMap(
                  yes ->
                      Arbitraries.of(yes, yes ? "yes" : "No")
                          .map(text -> new Statement(field, Given.of(yes), text, "")));
      case DATE ->
          Arbitraries.integers()
              .between(0, 20_000)
              .map(day -> LocalDate.of(2000, 1, 1).plusDays(day))
              .flatMap(
                  day ->
                      Arbitraries.of(day, day.toString())
                          .map(text -> new Statement(field, Given.of(day), text, "")));
      case TEXT -> field.symbol().isChoice() ? choice(field) : text(field);
    };
  }

  private static Arbitrary<Statement> text(Field field) {
    return Arbitraries.strings()
        .withCharRange('a', 'z')
        .withChars(" .,-0123456789")
        .ofMinLength(1)
        .ofMaxLength(40)
        .map(String::strip)
        .filter(text -> !text.isEmpty() && !text.equals("-"))
        .map(text -> new Statement(field, Given.of(text), text, ""));
  }

  private static Arbitrary<Statement> choice(Field field) {
    List<String> choices = field.symbol().choices();
    Arbitrary<Statement> one =
        Arbitraries.of(choices).map(word -> new Statement(field, Given.of(word), word, ""));
    List<String> simple = choices.stream().filter(word -> !word.contains(" or ")).toList();
    Arbitrary<Statement> several =
        Arbitraries.of(simple)
            .set()
            .ofMinSize(2)
            .map(List::copyOf)
            .filter(words -> !choices.contains(String.join(" or ", words)))
            .map(
                words ->
                    new Statement(
                        field,
                        new Given.OneOf(words.stream().map(Given::of).toList()),
                        String.join(" or ", words),
                        ""));
    return Arbitraries.oneOf(one, several);
  }

  private static Arbitrary<Statement> number(Field field) {
    Interval hull = field.allowed().hull();
    Arbitrary<BigDecimal> within =
        Arbitraries.bigDecimals().between(end(hull.low()), end(hull.high())).ofScale(2);
    Arbitrary<Statement> one = within.flatMap(number -> inSomeUnit(field, number));
    Arbitrary<Statement> range =
        Combinators.combine(within, within, Arbitraries.of("..", " to ", " – "))
            .as(
                (a, b, between) -> {
                  BigDecimal low = a.min(b);
                  BigDecimal high = a.max(b);
                  return new Statement(field, Given.between(low, high), low + between + high, "");
                });
    Arbitrary<Statement> either =
        Combinators.combine(within, within)
            .as(
                (a, b) ->
                    new Statement(
                        field,
                        new Given.OneOf(List.of(Given.of(a), Given.of(b))),
                        a + " or " + b,
                        ""));
    return Arbitraries.oneOf(one, range, either);
  }

  /** As a number or as text, in the field's unit or in a smaller one, beside it or behind it. */
  private static Arbitrary<Statement> inSomeUnit(Field field, BigDecimal number) {
    Given given = Given.of(number);
    List<Statement> ways = new ArrayList<>();
    ways.add(new Statement(field, given, number, ""));
    ways.add(new Statement(field, given, number.toPlainString(), ""));
    String smaller = Map.of("mm", "um", "cm", "mm").getOrDefault(field.unit(), "");
    if (!smaller.isEmpty()) {
      BigDecimal more = number.multiply(new BigDecimal(field.unit().equals("mm") ? 1000 : 10));
      ways.add(new Statement(field, given, more, smaller));
      ways.add(new Statement(field, given, more.toPlainString() + " " + smaller, ""));
    }
    return Arbitraries.of(ways);
  }

  private static BigDecimal end(Value value) {
    return ((Value.NumberValue) value).number();
  }
}
