package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.testcases.house.House;
import org.cotyla.trial.Claim;
import org.cotyla.trial.ClaimCheck;
import org.cotyla.trial.Difference;
import org.cotyla.trial.Expectation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

@DisplayName("The case library")
class CaseLibraryTest {

  @TestFactory
  @DisplayName("every case comes out as its expectation says")
  Stream<DynamicTest> everyCase() {
    Engine engine = House.engine();
    return CaseLibrary.cases().stream()
        .map(
            libraryCase ->
                dynamicTest(
                    libraryCase.displayName(),
                    libraryCase.file().toUri(),
                    () -> {
                      Expectation expectation = libraryCase.expectation();
                      hold(engine, libraryCase, expectation.because(), expectation.claims());
                    }));
  }

  @TestFactory
  @DisplayName("where published sources disagree, the other choice of the house tells itself apart")
  Stream<DynamicTest> everyVariant() {
    Map<String, Engine> engines = new HashMap<>();
    return CaseLibrary.cases().stream()
        .flatMap(
            libraryCase ->
                libraryCase.expectation().variants().stream()
                    .map(variant -> variantTest(libraryCase, variant, engines)));
  }

  private static DynamicTest variantTest(
      LibraryCase libraryCase, Expectation.Variant variant, Map<String, Engine> engines) {
    return dynamicTest(
        libraryCase.displayName() + " with " + variant.plain(),
        libraryCase.file().toUri(),
        () -> {
          Engine engine = engines.computeIfAbsent(variant.plain(), key -> engine(variant));
          hold(engine, libraryCase, variant.because(), variant.claims());
        });
  }

  private static Engine engine(Expectation.Variant variant) {
    return House.withConstant(variant.constant(), variant.expression());
  }

  private static void hold(
      Engine engine, LibraryCase libraryCase, String because, List<Claim> claims) {
    List<Difference> differences =
        ClaimCheck.differences(engine.evaluate(libraryCase.read()), claims);
    assertThat(differences).extracting(Difference::plain).as("%s", because).isEmpty();
  }
}
