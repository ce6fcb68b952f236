package org.cotyla.trial;

import java.util.List;
import org.cotyla.protocol.Protocol;

/**
 * What is expected of a case, and why.
 *
 * @param because the reason, in one or two sentences
 * @param sources keys of the protocol's sources
 * @param claims what is expected
 * @param variants what is expected when a constant of the protocol has another value
 */
public record Expectation(
    String because, List<String> sources, List<Claim> claims, List<Variant> variants) {

  /**
   * What is expected under another choice of the house.
   *
   * @param constant the constant that is changed
   * @param expression what it is changed to
   */
  public record Variant(String constant, String expression, String because, List<Claim> claims) {

    public Variant {
      claims = List.copyOf(claims);
    }

    /** The changed constant as it is shown: {@code migration line = 20}. */
    public String plain() {
      return constant + " = " + expression;
    }

    /** Whether the protocol has this choice. */
    public boolean isOf(Protocol protocol) {
      return protocol.calculations().stream()
          .filter(calculation -> calculation.name().equals(constant))
          .flatMap(calculation -> calculation.constant().stream())
          .anyMatch(value -> value.plain().equals(expression));
    }
  }

  public Expectation {
    sources = List.copyOf(sources);
    claims = List.copyOf(claims);
    variants = List.copyOf(variants);
  }
}
