package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Source;
import org.cotyla.testcases.house.House;
import org.cotyla.trial.Expectation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The files of the case library")
class LibraryFormTest {

  private static final int FEWEST_CASES = 90;
  private static final int FEWEST_INCOMPLETE = 15;

  @Test
  @DisplayName("no case lacks its expectation, and no expectation its case")
  void casesAndExpectationsComeInPairs() {
    assertThat(CaseLibrary.cases())
        .hasSizeGreaterThanOrEqualTo(FEWEST_CASES)
        .allSatisfy(libraryCase -> assertThat(libraryCase.expectationFile()).exists());
    assertThat(CaseLibrary.expectations()).allSatisfy(file -> assertThat(caseOf(file)).exists());
  }

  @Test
  @DisplayName("every expectation expects something, says why, and names sources of the workbook")
  void expectationsSayWhyAndNameSources() {
    Protocol protocol = House.engine().protocol();
    Set<String> known = protocol.sources().stream().map(Source::key).collect(Collectors.toSet());
    List<String> faults = new ArrayList<>();
    for (LibraryCase libraryCase : CaseLibrary.cases()) {
      Expectation expectation = libraryCase.expectation();
      if (expectation.because().isEmpty()) {
        faults.add(libraryCase.displayName() + " does not say why");
      }
      if (expectation.claims().isEmpty()) {
        faults.add(libraryCase.displayName() + " expects nothing");
      }
      if (expectation.sources().isEmpty()) {
        faults.add(libraryCase.displayName() + " names no source");
      }
      expectation.sources().stream()
          .filter(source -> !known.contains(source))
          .forEach(source -> faults.add(libraryCase.displayName() + " names " + source));
      expectation.variants().stream()
          .filter(variant -> variant.because().isBlank() || variant.claims().isEmpty())
          .forEach(variant -> faults.add(libraryCase.displayName() + ": " + variant.plain()));
    }
    assertThat(faults).isEmpty();
  }

  @Test
  @DisplayName("every case has a title and a note of its own, and says that it is invented")
  void casesAreTitledAndInvented() throws Exception {
    Set<String> titles = new HashSet<>();
    for (LibraryCase libraryCase : CaseLibrary.cases()) {
      Case given = libraryCase.read();
      assertThat(given.title()).as(libraryCase.displayName()).isNotBlank();
      assertThat(titles.add(given.title())).as(given.title() + " is used twice").isTrue();
      assertThat(Files.readString(libraryCase.file()))
          .as(libraryCase.displayName())
          .contains("\"note\": \"Invented, the hip unit of Sandhaven.");
    }
  }

  @Test
  @DisplayName("a good number of cases leaves data out")
  void manyCasesAreIncomplete() {
    assertThat(CaseLibrary.cases())
        .filteredOn(libraryCase -> libraryCase.theme().equals("incomplete"))
        .hasSizeGreaterThanOrEqualTo(FEWEST_INCOMPLETE);
  }

  private static Path caseOf(Path expectation) {
    String name = String.valueOf(expectation.getFileName());
    return expectation.resolveSibling(name.replace(LibraryCase.EXPECTATION, ".json"));
  }
}
