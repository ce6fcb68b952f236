package org.cotyla.testcases.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.cotyla.testcases.house.DefectPicture;
import org.cotyla.testcases.house.Known;
import org.cotyla.testcases.house.LeansOn;
import org.cotyla.testcases.house.OrdinaryCase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The type of bone loss after Saleh and Gross")
class GrossTypeTest {

  private static String type(OrdinaryCase given) {
    return given.answer().value("gross type");
  }

  @ParameterizedTest(name = "uncontained, {0} % of the socket left: {1}")
  @CsvSource({"70, III", "51, III", "50, III", "49, IV", "20, IV"})
  @DisplayName("Uncontained: up to half lost is III, more than half is IV, exactly half is III")
  @LeansOn(value = "LEE-2010", known = Known.FOUND)
  @LeansOn(value = "SALEH-2001", known = Known.FROM_MEMORY)
  void uncontained(int contact, String expected) {
    OrdinaryCase open = DefectPicture.CLASS_3A.planned().with("host bone contact", contact);
    assertThat(type(open)).isEqualTo(expected);
  }

  @Test
  @DisplayName("Nothing lost is I, a contained loss is II whatever its size")
  @LeansOn(value = "CLASS-TABLE-2020", known = Known.FOUND)
  @LeansOn(value = "SALEH-2001", known = Known.FROM_MEMORY)
  void contained() {
    assertThat(type(OrdinaryCase.planned())).isEqualTo("I");
    assertThat(type(DefectPicture.CLASS_2A.planned())).isEqualTo("II");
    OrdinaryCase large = DefectPicture.CLASS_3A.planned().with("defect contained", true);
    assertThat(type(large.with("host bone contact", 35))).isEqualTo("II");
  }

  @ParameterizedTest
  @CsvSource({"CLASS_1", "CLASS_2A", "CLASS_3A", "CLASS_3B"})
  @DisplayName("A parted pelvis is V, and that goes before the size of the loss")
  @LeansOn(value = "AMENABAR-2016", known = Known.FOUND)
  void parted(DefectPicture picture) {
    OrdinaryCase parted = picture.planned().with("column fracture line", "both columns");
    assertThat(type(parted)).isEqualTo("V");
  }
}
