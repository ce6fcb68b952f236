package org.cotyla.ledgeraudit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.audit.OutcomeCurve;
import org.cotyla.audit.Survival;
import org.cotyla.ledger.Choice;
import org.cotyla.ledger.Content;
import org.cotyla.protocol.Counts;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Following decisions to what came of them")
class FollowUpTest {

  private static final LocalDate MARCH_1 = LocalDate.of(2026, 3, 1);
  private static final LocalDate END = LocalDate.of(2026, 12, 31);

  private final FollowUp followUp = new FollowUp();

  @Test
  @DisplayName("ends with the next decision by its day, also when that was recorded first")
  void goesByDays() {
    followUp.decided(7, decision("R-1", "cage", MARCH_1.plusDays(9)));
    followUp.decided(8, decision("R-1", "cup", MARCH_1));
    followUp.cameOf(event(7, MARCH_1.plusDays(20)));
    followUp.cameOf(event(8, MARCH_1.plusDays(9)));
    assertThat(curve("cup").steps()).extracting(Survival.Step::days).containsExactly(9L);
    assertThat(curve("cage").steps()).extracting(Survival.Step::days).containsExactly(11L);
  }

  @Test
  @DisplayName("counts no event from behind the last day that is known")
  void nothingAfterTheEnd() {
    followUp.decided(7, decision("R-1", "cup", MARCH_1));
    followUp.decided(8, decision("R-2", "cage", MARCH_1));
    followUp.cameOf(outcome(7, "lost", Counts.CENSORING, MARCH_1.plusDays(30)));
    followUp.cameOf(event(7, MARCH_1.plusDays(31)));
    followUp.cameOf(event(8, MARCH_1.plusDays(40)));
    assertThat(followUp.curves(MARCH_1, END))
        .filteredOn(one -> one.option().equals("cup"))
        .allSatisfy(one -> assertThat(one.survival().steps()).isEmpty());
    assertThat(curve("cage").steps()).extracting(Survival.Step::days).containsExactly(40L);
  }

  @Test
  @DisplayName("counts an event on the last day that is known")
  void eventOnTheLastDay() {
    followUp.decided(7, decision("R-1", "cup", MARCH_1));
    followUp.cameOf(outcome(7, "lost", Counts.CENSORING, MARCH_1.plusDays(30)));
    followUp.cameOf(event(7, MARCH_1.plusDays(30)));
    assertThat(curve("cup").steps()).extracting(Survival.Step::days).containsExactly(30L);
  }

  private Survival curve(String option) {
    return followUp.curves(MARCH_1, END).stream()
        .filter(one -> one.option().equals(option))
        .map(OutcomeCurve::survival)
        .reduce((first, second) -> second)
        .orElseThrow();
  }

  private static Content.Decision decision(String reference, String option, LocalDate day) {
    return new Content.Decision(
        reference,
        3,
        day,
        "consultant",
        List.of(new Choice("construct", option, Choice.Stood.FIRST)),
        true,
        Optional.empty(),
        Optional.empty());
  }

  private static Content.Outcome event(long decision, LocalDate day) {
    return outcome(decision, "dislocation", Counts.EVENT, day);
  }

  private static Content.Outcome outcome(long decision, String name, Counts counts, LocalDate day) {
    return new Content.Outcome("R-1", decision, day, name, counts, "registrar");
  }
}
