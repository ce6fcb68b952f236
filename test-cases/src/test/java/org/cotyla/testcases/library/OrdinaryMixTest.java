package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.RankedOption;
import org.cotyla.testcases.house.House;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An ordinary mix of revisions (common practice, no source)")
class OrdinaryMixTest {

  private static final String THEME = "ordinary";
  private static final double MOST = 0.9;
  private static final int FEWEST = 20;

  @Test
  @DisplayName("more than nine in ten are solved with a hemispherical cup")
  void aHemisphericalCupSolvesNineInTen() {
    Engine engine = House.engine();
    List<LibraryCase> mix =
        CaseLibrary.cases().stream().filter(c -> c.theme().equals(THEME)).toList();
    List<String> otherwise =
        mix.stream()
            .filter(c -> !leader(engine, c).equals("hemispherical cup"))
            .map(LibraryCase::name)
            .toList();
    assertThat(mix).hasSizeGreaterThanOrEqualTo(FEWEST);
    assertThat((mix.size() - otherwise.size()) / (double) mix.size())
        .as("led otherwise: %s", otherwise)
        .isGreaterThan(MOST);
  }

  private static String leader(Engine engine, LibraryCase libraryCase) {
    return engine
        .evaluate(libraryCase.read())
        .ranking("construct")
        .flatMap(ranking -> ranking.leader())
        .map(RankedOption::name)
        .orElse("nothing");
  }
}
