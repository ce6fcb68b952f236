package org.cotyla.protocol;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.CellRef;
import org.cotyla.value.ValueSet;

/**
 * A datum of a case, or what a decision gives.
 *
 * @param symbol its name and type; a choice's values in order
 * @param isGiven whether a case states it; otherwise a decision gives it
 * @param unit the UCUM code of its unit; empty for none
 * @param allowed every value that it may have
 * @param usual the values normally met, when stated
 * @param stage the place of its stage among the protocol's stages, counted from 0
 * @param group the heading under which people find it
 * @param meaning one sentence: how it is measured, from where
 * @param sources keys of sources
 * @param measurementError how far a measured value may be off either way, in the unit, when stated
 */
public record Field(
    Symbol symbol,
    boolean isGiven,
    String unit,
    ValueSet allowed,
    Optional<ValueSet> usual,
    int stage,
    String group,
    String meaning,
    List<String> sources,
    Optional<BigDecimal> measurementError,
    CellRef at) {

  public Field {
    sources = List.copyOf(sources);
  }

  public String name() {
    return symbol.name();
  }
}
