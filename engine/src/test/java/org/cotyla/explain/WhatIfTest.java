package org.cotyla.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Map;
import org.cotyla.caseform.SeedlingProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Field;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A case with findings supposed otherwise")
class WhatIfTest {

  private static final Engine ENGINE = Engine.of(SeedlingProtocol.protocol());
  private static final Case SOUND =
      Case.of(Map.of("seed depth", 12, "soil", "loam", "watered", true));

  @Test
  @DisplayName("is run before and after, in the field's unit or another")
  void units() {
    WhatIf whatIf = suppose("Seed Depth", "4 cm");
    assertThat(after(whatIf, "seed depth")).isEqualTo("40");
    assertThat(whatIf.comparison().ranking("pot").orElseThrow().changesLeader()).isTrue();
    assertThat(whatIf.changed()).extracting(Field::name).containsExactly("seed depth");
  }

  @Test
  @DisplayName("takes ranges, alternatives and nothing, as forms do")
  void forms() {
    assertThat(after(suppose("seed depth", "20..40"), "seed depth")).isEqualTo("[20..40]");
    assertThat(after(suppose("soil", "clay or sand"), "soil")).isEqualTo("clay, sand");
    WhatIf unknown = suppose("seed-depth", "");
    assertThat(after(unknown, "seed depth")).isEqualTo("[0..80]");
    assertThat(unknown.comparison().findings().get(0).kind())
        .isEqualTo(FindingChange.Kind.WITHDRAWN);
  }

  @Test
  @DisplayName("says nothing of a field that the case states the same, but that it was asked")
  void same() {
    WhatIf whatIf = suppose("soil", "loam");
    assertThat(whatIf.comparison().findings()).isEmpty();
    assertThat(whatIf.comparison().changesAnything()).isFalse();
    assertThat(whatIf.changed()).hasSize(1);
  }

  @Test
  @DisplayName("takes plain Java values")
  void plain() {
    WhatIf whatIf = WhatIf.of(ENGINE, SOUND, List.of(Supposition.of("watered", false)));
    assertThat(after(whatIf, "watered")).isEqualTo("no");
  }

  @Test
  @DisplayName("is refused with every fault of case and suppositions at once, and the nearest word")
  void faults() {
    String refused =
        catchThrowableOfType(
                RejectedException.class,
                () ->
                    WhatIf.of(
                        ENGINE,
                        Case.of(Map.of("seed depth", 900)),
                        List.of(
                            Supposition.written("depth", "3"),
                            Supposition.written("soyl", "clay"),
                            Supposition.written("soil", "cley"),
                            Supposition.written("vigour", "weak"),
                            Supposition.written("watered", "yes"),
                            Supposition.unknown("Watered"))))
            .getMessage();
    assertThat(refused)
        .contains("C006 case field `seed depth`")
        .contains("C001 change of `depth`: this protocol has no such field")
        .contains("did you mean `seed depth`?", "did you mean `soil`?", "did you mean `clay`?")
        .contains("C003 change of `vigour`")
        .contains("C046 change of `Watered`: this field is changed twice");
  }

  private static WhatIf suppose(String field, String text) {
    return WhatIf.of(ENGINE, SOUND, List.of(Supposition.written(field, text)));
  }

  private static String after(WhatIf whatIf, String field) {
    return whatIf.comparison().after().findings().datum(field).orElseThrow().value().plain();
  }
}
