package org.cotyla.firing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Field;
import org.cotyla.compile.SampleDraft;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;

class SessionsTest {

  private static final int EVALUATIONS = 5000;

  private final Protocol protocol = new SampleDraft().protocol();
  private final RuleBase rules = RuleBase.of(protocol.decisions());

  private static Scope scope(PossibleValues width, PossibleValues grade) {
    return symbol ->
        switch (symbol.name()) {
          case "width" -> width;
          case "grade" -> grade;
          case "house line" -> PossibleValues.of(Value.of(30));
          default -> throw new IllegalStateException("asked for " + symbol.name());
        };
  }

  private int heldSessions() throws ReflectiveOperationException {
    Field field = RuleBase.class.getDeclaredField("kieBase");
    field.setAccessible(true);
    return ((KieBase) field.get(rules)).getKieSessions().size();
  }

  @Test
  @DisplayName("After thousands of evaluations, some of which failed, no session is held")
  void sessionsAreDisposed() throws ReflectiveOperationException {
    PossibleValues low = PossibleValues.of(Value.of("low"));
    for (int i = 0; i < EVALUATIONS; i++) {
      PossibleValues width = PossibleValues.of(Value.of(i % 60));
      try (Session session = rules.open()) {
        assertThat(session.fire(0, scope(width, low))).hasSize(1);
      }
      if (i % 100 == 0) {
        assertThatThrownBy(this::failing).hasMessage("asked for too early");
      }
    }
    assertThat(heldSessions()).isZero();
  }

  private void failing() {
    try (Session session = rules.open()) {
      session.fire(
          0,
          symbol -> {
            throw new IllegalStateException("asked for too early");
          });
    }
  }

  @Test
  @DisplayName("A row fires unless a test is false, and carries what each of its tests is")
  void openRows() {
    PossibleValues width =
        PossibleValues.of(
            ValueSet.between(ValueType.NUMBER, Value.of(20), true, Value.of(40), true));
    PossibleValues grade = PossibleValues.of(Value.of("low"));
    try (Session session = rules.open()) {
      assertThat(session.fire(0, scope(width, grade)))
          .extracting(row -> row.row().id() + " " + row.truths())
          .containsExactly(
              "K-1 " + java.util.List.of(Truth.OPEN, Truth.TRUE),
              "K-2 " + java.util.List.of(Truth.OPEN, Truth.TRUE));
    }
  }

  @Test
  @DisplayName("Symbols with one place are one name, so that a test is asked of the right one")
  void symbols() {
    Symbol width = protocol.vocabulary().symbol("width").orElseThrow();
    assertThat(protocol.vocabulary().symbols().get(width.index())).isEqualTo(width);
  }
}
