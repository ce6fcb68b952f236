package org.cotyla.finite;

import java.util.List;
import org.cotyla.finite.Circuit.Term;

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
    } else if (claim instanceof Claim.All all) {
      return circuit.and(all.claims().stream().map(part -> literal(part, side)).toList());
    } else if (claim instanceof Claim.Any any) {
      return circuit.or(any.claims().stream().map(part -> literal(part, side)).toList());
    } else if (claim instanceof Claim.AtLeast many) {
      List<Term> terms =
          many.claims().stream().map(part -> new Term(literal(part, side), 1)).toList();
      return circuit.reaches(terms, many.count());
    }
    throw new IllegalStateException("no such claim");
  }

  private static org.cotyla.value.ValueSet option(String name) {
    return org.cotyla.value.ValueSet.of(org.cotyla.value.Value.of(name));
  }
}
