package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.testcases.house.Answer;
import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The AAOS type of bone loss, and the subtypes of its type IV")
class AaosTypeTest {

  private static final OrdinaryCase BROKEN =
      OrdinaryCase.planned()
          .with(Map.of("column fracture line", "both columns", "break onset", "long standing"));

  /** A pelvis, and the type and place (or subtype) that it is. */
  record Example(String name, OrdinaryCase findings, String type, String place) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Example> types() {
    OrdinaryCase plain = OrdinaryCase.planned();
    return Stream.of(
        new Example("nothing missing", plain, "no notable loss", "not applicable"),
        new Example(
            "medial wall absent, rim whole", DefectPicture.CLASS_2C.planned(), "I", "central"),
        new Example("rim missing, no cavity", plain.with("rim loss", 2), "I", "peripheral"),
        new Example(
            "medial wall thinned, rim whole",
            DefectPicture.CLASS_2C.planned().with("medial wall", "thinned"),
            "II",
            "central"),
        new Example(
            "a cavity behind a whole rim", DefectPicture.CLASS_2A.planned(), "II", "peripheral"),
        new Example(
            "superior rim missing and a large cavity",
            DefectPicture.CLASS_3A.planned(),
            "III",
            "peripheral"),
        new Example(
            "rim and medial wall missing",
            DefectPicture.CLASS_3B.planned(),
            "III",
            "central and peripheral"),
        new Example("the pelvis parted", BROKEN, "IV", "not applicable"),
        new Example("a fused hip", BROKEN.with("hip fused", true), "V", "not applicable"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("types")
  @DisplayName("Segmental, cavitary, combined, parted or fused")
  @LeansOn(value = "CLASS-TABLE-2020", known = Known.FOUND)
  @LeansOn(value = "DANTONIO-1989", known = Known.FROM_MEMORY)
  void type(Example example) {
    Answer answer = example.findings().answer();
    assertThat(answer.value("aaos type")).isEqualTo(example.type());
    assertThat(answer.value("aaos location")).isEqualTo(example.place());
  }

  static Stream<Example> subtypes() {
    Map<String, String> parted =
        Map.of("column fracture line", "both columns", "break onset", "long standing");
    OrdinaryCase severe = DefectPicture.CLASS_3B.planned().with(parted);
    return Stream.of(
        new Example("little else lost", BROKEN, "IV", "IVa"),
        new Example("severe loss", severe, "IV", "IVb"),
        new Example("irradiated", BROKEN.with("pelvic irradiation", true), "IV", "IVc"),
        new Example("severe and irradiated", severe.with("pelvic irradiation", true), "IV", "IVc"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("subtypes")
  @DisplayName("A parted pelvis is IVa, with severe loss IVb, irradiated IVc")
  @LeansOn(value = "BERRY-1999", known = Known.FROM_MEMORY)
  void subtype(Example example) {
    Answer answer = example.findings().answer();
    assertThat(answer.value("aaos type")).isEqualTo(example.type());
    assertThat(answer.value("discontinuity subtype")).isEqualTo(example.place());
  }
}
