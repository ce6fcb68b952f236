package org.cotyla.name;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NamesTest {

  private final NameIndex<String> names =
      NameIndex.of(List.of("size", "size limit", "size limit two", "Köhler line", "a"), n -> n);

  @ParameterizedTest(name = "{0}")
  @DisplayName("Case, spaces, underscores, hyphens, dashes and accents make no difference")
  @ValueSource(
      strings = {
        "Köhler line",
        "kohler_line",
        "KÖHLER-LINE",
        "Ko\u0308hler\u00a0line",
        "k ö h l e r line",
        "köhler\u2013line",
        "köhler\u2011line"
      })
  void sameKey(String spelling) {
    assertThat(Names.key(spelling)).isEqualTo("kohlerline");
    assertThat(names.find(spelling)).contains("Köhler line");
  }

  @ParameterizedTest(name = "{0} and {1}")
  @DisplayName(
      "Letters whose capitals depend on their place, or on the language, are still the same")
  @CsvSource({
    "\u039b\u039f\u0393\u039f\u03a3, \u03bb\u03cc\u03b3\u03bf\u03c2",
    "TITLE, title",
    "owner\u2019s, OWNER's"
  })
  void letters(String a, String b) {
    assertThat(Names.key(a)).isEqualTo(Names.key(b));
    assertThat(NameIndex.of(List.of(a), n -> n).longestAt(b + " > 5", 0))
        .contains(new NameIndex.Found<>(a, b.length()));
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("The longest name that ends with a word is found in running text")
  @CsvSource(
      delimiter = '|',
      value = {
        "size limit two + 1 | size limit two | 14",
        "size limit tw + 1  | size limit     | 10",
        "size limits        | size           | 4",
        "size-limit*2       | size limit     | 10",
        "size - limit       | size           | 4",
        "size_limit-size    | size limit     | 10",
        "a+b                | a              | 1"
      })
  void longest(String text, String name, int end) {
    assertThat(names.longestAt(text, 0)).contains(new NameIndex.Found<>(name, end));
  }

  @ParameterizedTest(name = "`{0}`")
  @DisplayName("A name is not found inside a longer word or where another word stands")
  @ValueSource(strings = {"sizes", "resize", "ab", "5 size", ""})
  void notFound(String text) {
    assertThat(names.longestAt(text, 0)).isEmpty();
  }

  @Test
  @DisplayName(
      "The nearest word is at most a third of the letters away, the first of equals by name")
  void nearest() {
    List<String> words = List.of("moderate", "mild", "severe", "mind");
    assertThat(NearestWord.to("moderat", words)).contains("moderate");
    assertThat(NearestWord.to("Sever", words)).contains("severe");
    assertThat(NearestWord.to("mibd", words)).contains("mild");
    assertThat(NearestWord.to("xyz", words)).isEmpty();
    assertThat(NearestWord.to("m", words)).isEmpty();
    assertThat(NearestWord.to("", words)).isEmpty();
  }

  @Test
  @DisplayName("Help names the nearest word, then what is valid, shortened after a dozen")
  void help() {
    assertThat(NearestWord.help("mld", List.of("mild", "severe")))
        .isEqualTo("did you mean `mild`? (mild, severe)");
    assertThat(NearestWord.help("zzzzz", List.of("mild", "severe")))
        .isEqualTo("expected one of: mild, severe");
    assertThat(NearestWord.help("zzzzz", List.of())).isEqualTo("nothing is defined here");
    List<String> many = java.util.stream.IntStream.range(0, 15).mapToObj(i -> "word " + i).toList();
    assertThat(NearestWord.help("zzzzz", many)).endsWith("word 11, and 3 more");
  }
}
