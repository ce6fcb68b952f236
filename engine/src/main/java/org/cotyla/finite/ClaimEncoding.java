package org.cotyla.finite;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** Claims as literals. */
final class ClaimEncoding {

  private final List<ProtocolEncoding> sides;

  ClaimEncoding(List<ProtocolEncoding> sides) {
    this.sides = sides;
  }

  int literal(Claim claim, int side) {
    ProtocolEncoding protocol = sides.get(side);
    Circuit circuit = protocol.circuit();
    if (claim instanceof Claim.Of of) {
      return literal(of.claim(), of.other());
    } else if (claim instanceof Claim.Matches matches) {
      return protocol.table(matches.table()).matches(matches.row());
    } else if (claim instanceof Claim.Counts counts) {
      return protocol.table(counts.table()).counts(counts.row());
    } else if (claim instanceof Claim.NoRow none) {
      return protocol.table(none.table()).none();
    } else if (claim instanceof Claim.Is is) {
      return protocol.classes(is.name()).within(is.among().values(), is.among().orNothing());
    } else if (claim instanceof Claim.Holds holds) {
      return protocol.holds(holds.input(), holds.test());
    } else if (claim instanceof Claim.First first) {
      return protocol.ranking(first.ranking()).first().within(option(first.option()), false);
    } else if (claim instanceof Claim.RuledOut out) {
      return -protocol.ranking(out.ranking()).available(out.option());
    } else if (claim instanceof Claim.Not not) {
      return -literal(not.claim(), side);
    } else if (claim instanceof Claim.AddUpTo sum) {
      return addUpTo(sum, side, circuit);
    } else if (claim instanceof Claim.All all) {
      return circuit.and(all.claims().stream().map(part -> literal(part, side)).toList());
    } else if (claim instanceof Claim.Any any) {
      return circuit.or(any.claims().stream().map(part -> literal(part, side)).toList());
    } else if (claim instanceof Claim.AtLeast many) {
      List<Circuit.Term> terms =
          many.claims().stream()
              .map(part -> new Circuit.Term(literal(part, side), BigInteger.ONE))
              .toList();
      return circuit.reaches(terms, BigInteger.valueOf(many.count()));
    }
    throw new IllegalStateException("no such claim");
  }

  /** In whole multiples of the smallest decimal place that any weight has. */
  private int addUpTo(Claim.AddUpTo sum, int side, Circuit circuit) {
    int decimals = decimals(sum.least());
    for (Claim.Weighted term : sum.terms()) {
      decimals = Math.max(decimals, decimals(term.weight()));
    }
    List<Circuit.Term> terms = new ArrayList<>();
    for (Claim.Weighted term : sum.terms()) {
      BigInteger weight = term.weight().movePointRight(decimals).toBigIntegerExact();
      terms.add(new Circuit.Term(literal(term.claim(), side), weight));
    }
    return circuit.reaches(terms, sum.least().movePointRight(decimals).toBigIntegerExact());
  }

  private static int decimals(BigDecimal number) {
    return Math.max(0, number.stripTrailingZeros().scale());
  }

  private static org.cotyla.value.ValueSet option(String name) {
    return org.cotyla.value.ValueSet.of(org.cotyla.value.Value.of(name));
  }
}
