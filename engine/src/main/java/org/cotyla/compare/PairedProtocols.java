package org.cotyla.compare;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Symbol;
import org.cotyla.finding.Case;
import org.cotyla.finding.Findings;
import org.cotyla.issue.RejectedException;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Protocol;

/**
 * Two versions of a protocol, made ready to be run on many cases: what says the same in both is
 * worked out once for both, and what no edit reaches not at all. Safe to share between threads.
 */
final class PairedProtocols {

  private final Engine before;
  private final Engine after;
  private final Counterparts counterparts;
  private final FieldReadings readings;
  private final ReachedSteps reached;
  private final Map<Symbol, Symbol> oldNames = new HashMap<>();

  PairedProtocols(Engine before, Engine after) {
    this.before = before;
    this.after = after;
    Protocol old = before.protocol();
    Protocol young = after.protocol();
    this.counterparts = new Counterparts(old, new Pairs(old, young));
    this.readings = new FieldReadings(old, young);
    WrittenAlike alike =
        new WrittenAlike(Side.of(0, before, Map.of()), Side.of(1, after, Map.of()));
    Set<Symbol> constants = constants(young);
    this.reached = ReachedSteps.of(young, counterparts, alike, readings, constants);
    for (Symbol symbol : young.vocabulary().symbols()) {
      if (!constants.contains(symbol)) {
        old.vocabulary().symbol(symbol.name()).ifPresent(was -> oldNames.put(symbol, was));
      }
    }
  }

  private Set<Symbol> constants(Protocol young) {
    return young.calculations().stream()
        .filter(calculation -> calculation.constant().isPresent())
        .filter(is -> counterparts.of(is).flatMap(Calculation::constant).isPresent())
        .map(Calculation::symbol)
        .collect(Collectors.toSet());
  }

  Counterparts counterparts() {
    return counterparts;
  }

  ReachedSteps reached() {
    return reached;
  }

  FieldReadings readings() {
    return readings;
  }

  /** The name of the old protocol that is the same as one of the new; constants are left out. */
  Optional<Symbol> oldName(Symbol symbol) {
    return Optional.ofNullable(oldNames.get(symbol));
  }

  /** Whether one reading of a case is enough, since both protocols make the same of it. */
  boolean readAlike() {
    return readings.areAlike();
  }

  /**
   * The case as the old protocol reads it.
   *
   * @throws RejectedException listing what the old protocol says against it
   */
  Findings readByOld(Case given) {
    return before.read(given);
  }

  /**
   * The case as the new protocol reads it.
   *
   * @throws RejectedException listing what the new protocol says against it
   */
  Findings readByNew(Case given) {
    return after.read(given);
  }

  /** The case, to be run by both; what is given back must be closed. */
  PairedCase open(Findings old, Optional<Findings> young) {
    return new PairedCase(this, before.open(old), young.map(after::open).orElseGet(after::open));
  }
}
