package org.cotyla.expression;

import java.util.Optional;
import java.util.Set;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;
import org.jspecify.annotations.Nullable;

/**
 * A cell's test made ready for one column: where all its endpoints are constants, the region of
 * values that satisfy it is worked out once, and the test is then exact over any set of values.
 */
public final class PreparedTest {

  private final CellTest test;
  private final Set<Symbol> references;
  private final @Nullable ValueSet region;
  private final Truth forNothing;

  private PreparedTest(CellTest test, @Nullable ValueSet region, Truth forNothing) {
    this.test = test;
    this.references = test.references();
    this.region = region;
    this.forNothing = forNothing;
  }

  /**
   * @param test the test
   * @param type the type of the column's input
   * @param constants the names that have one value in every case
   * @param isConstant which names those are
   */
  public static PreparedTest of(
      CellTest test, ValueType type, Scope constants, Set<Symbol> isConstant) {
    if (!isConstant.containsAll(test.references())) {
      return new PreparedTest(test, null, Truth.OPEN);
    }
    Optional<ValueSet> region = test.region(type, constants);
    Truth forNothing = test.outcome(PossibleValues.nothing(type), constants).matches();
    return new PreparedTest(test, region.orElse(null), forNothing);
  }

  public CellTest test() {
    return test;
  }

  /** The values that satisfy the test in every case, when its endpoints are constants. */
  public Optional<ValueSet> region() {
    return Optional.ofNullable(region);
  }

  /** Whether nothing satisfies the test, when its endpoints are constants. */
  public Truth forNothing() {
    return forNothing;
  }

  public Truth truth(PossibleValues input, Scope scope) {
    if (region == null) {
      return test.outcome(input, scope).matches();
    }
    if (!input.orNothing()) {
      return region.truthFor(input.values());
    }
    if (input.values().isEmpty()) {
      return forNothing;
    }
    return region.truthFor(input.values()).either(forNothing);
  }

  /** Every name that the test uses beside its input. */
  public Set<Symbol> references() {
    return references;
  }

  public boolean isAnything() {
    return test instanceof CellTest.Anything;
  }
}
