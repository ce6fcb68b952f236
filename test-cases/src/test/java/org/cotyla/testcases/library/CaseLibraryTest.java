package org.cotyla.testcases.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cotyla.evaluate.Engine;
import org.cotyla.testcases.house.House;
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
                      hold(engine, libraryCase, expectation.because(), expectation.expect());
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
          hold(engine, libraryCase, variant.because(), variant.expect());
        });
  }

  private static Engine engine(Expectation.Variant variant) {
    return House.withConstant(variant.constant(), variant.expression());
  }

  private static void hold(
      Engine engine, LibraryCase libraryCase, String because, Map<String, JsonNode> expect) {
    List<String> differences =
        ExpectationCheck.differences(engine.evaluate(libraryCase.read()), expect);
    assertThat(differences).as("%s", because).isEmpty();
  }
}
