package org.cotyla.testcases.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.Property;
import org.cotyla.protocol.Certainty;
import org.cotyla.protocol.Source;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.platform.commons.support.ReflectionSupport;

@DisplayName("Every check of the house protocol names its source")
class SourcesOfChecksTest {

  private static final String PACKAGES = "org.cotyla.testcases.";

  @ParameterizedTest
  @ValueSource(strings = {"published", "trade", "neighbours"})
  @DisplayName("No check stands without one, and each key is a source of the protocol")
  void everyCheck(String name) {
    List<Method> checks = checks(name).toList();
    assertThat(checks).isNotEmpty();
    assertThat(checks)
        .allSatisfy(check -> assertThat(leanings(check)).as("sources of %s", check).isNotEmpty());
    assertThat(checks.stream().flatMap(SourcesOfChecksTest::leanings))
        .allSatisfy(
            leaning ->
                assertThat(leaning.value())
                    .isNotEmpty()
                    .allMatch(key -> House.engine().protocol().source(key).isPresent()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"published", "trade", "neighbours"})
  @DisplayName("A value is not called found where the protocol itself calls the source remembered")
  void memoryIsCalledMemory(String name) {
    assertThat(checks(name).flatMap(SourcesOfChecksTest::leanings))
        .filteredOn(leaning -> leaning.known() == Known.FOUND)
        .allSatisfy(
            leaning ->
                assertThat(leaning.value())
                    .noneMatch(
                        key ->
                            certainty(key).equals(Optional.of(Certainty.FROM_MEMORY))
                                || certainty(key).equals(Optional.of(Certainty.COMMON_PRACTICE))));
  }

  @Test
  @DisplayName("A rule of thumb of the trade leans on common practice and on no publication")
  void commonPractice() {
    assertThat(checks("trade").flatMap(SourcesOfChecksTest::leanings))
        .filteredOn(leaning -> leaning.known() == Known.COMMON_PRACTICE)
        .isNotEmpty()
        .allSatisfy(leaning -> assertThat(leaning.value()).containsExactly("COMMON-PRACTICE"));
  }

  private static Optional<Certainty> certainty(String key) {
    return House.engine().protocol().source(key).map(Source::certainty);
  }

  private static Stream<LeansOn> leanings(Method check) {
    return Arrays.stream(check.getAnnotationsByType(LeansOn.class));
  }

  private static Stream<Method> checks(String name) {
    return ReflectionSupport.findAllClassesInPackage(
            PACKAGES + name, type -> true, type -> type.endsWith("Test"))
        .stream()
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
        .filter(
            method ->
                method.isAnnotationPresent(Test.class)
                    || method.isAnnotationPresent(ParameterizedTest.class)
                    || method.isAnnotationPresent(Property.class)
                    || method.isAnnotationPresent(Example.class));
  }
}
