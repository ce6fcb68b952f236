package org.cotyla.trial;

import java.util.List;
import java.util.Optional;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.TestCase;

/**
 * A case to run, and what should come of it.
 *
 * @param suite the sheet or folder that it stands in
 * @param name its name there
 * @param given the case
 * @param because why this answer is right; may be empty
 * @param claims what its answer should be
 */
public record Trial(String suite, String name, Case given, String because, List<Claim> claims) {

  public Trial {
    claims = List.copyOf(claims);
  }

  /** A case with its expectation, of which the variant counts that the protocol has chosen. */
  public static Trial of(
      String suite, String name, Case given, Expectation expectation, Protocol protocol) {
    Optional<Expectation.Variant> chosen =
        expectation.variants().stream().filter(variant -> variant.isOf(protocol)).findFirst();
    return chosen
        .map(
            variant ->
                new Trial(
                    suite,
                    name,
                    given,
                    variant.because() + " (with " + variant.plain() + ")",
                    variant.claims()))
        .orElseGet(
            () -> new Trial(suite, name, given, expectation.because(), expectation.claims()));
  }

  /** The cases that stand in the protocol's own workbook. */
  public static List<Trial> ofWorkbook(Protocol protocol) {
    return protocol.checks().cases().stream().map(Trial::of).toList();
  }

  private static Trial of(TestCase written) {
    List<Claim> claims =
        written.expected().stream()
            .map(
                expected ->
                    new Claim(expected.about(), expected.values(), Optional.of(expected.at())))
            .toList();
    return new Trial(
        written.at().sheet(), written.name(), Case.of(written), written.because(), claims);
  }
}
