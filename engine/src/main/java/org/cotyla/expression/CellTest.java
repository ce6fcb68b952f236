package org.cotyla.expression;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/** A test of a decision table's cell, parsed once. Immutable; prints itself back as S-FEEL. */
public sealed interface CellTest {

  /** Which outcomes the test can have for an input that can be what is given. */
  Ternary outcome(PossibleValues input, Scope scope);

  /**
   * The values that satisfy the test, when all its names are known in the scope and have one value
   * each; the answer for nothing is not part of it. A test that may be neither true nor false at a
   * value has no region, since the region of its opposite would be wrong there.
   */
  Optional<ValueSet> region(ValueType type, Scope constants);

  /** The test as S-FEEL text; parsing it again gives an equal test. */
  String print();

  /** The formulas in it. */
  List<Expression> parts();

  /** Every name that it uses. */
  default Set<Symbol> references() {
    return parts().stream()
        .flatMap(part -> part.references().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** A dash: anything at all, also nothing. */
  record Anything() implements CellTest {
    @Override
    public Ternary outcome(PossibleValues input, Scope scope) {
      return Ternary.of(true);
    }

    @Override
    public Optional<ValueSet> region(ValueType type, Scope constants) {
      return Optional.of(ValueSet.all(type));
    }

    @Override
    public String print() {
      return "-";
    }

    @Override
    public List<Expression> parts() {
      return List.of();
    }
  }

  /** A comparison of the input with an endpoint; equality may be with null. */
  record Compared(Relation relation, Expression endpoint) implements CellTest {
    @Override
    public Ternary outcome(PossibleValues input, Scope scope) {
      return relation.compare(input, endpoint.evaluate(scope));
    }

    @Override
    public Optional<ValueSet> region(ValueType type, Scope constants) {
      PossibleValues limit = endpoint.evaluate(constants);
      boolean neverTrueNorFalse =
          relation.isOrder() && (limit.isNothing() || type == ValueType.YES_NO);
      if (neverTrueNorFalse) {
        return Optional.empty();
      }
      if (limit.isNothing()) {
        boolean everything = relation == Relation.UNEQUAL;
        return Optional.of(everything ? ValueSet.all(type) : ValueSet.none(type));
      }
      if (limit.type() != type) {
        return Optional.empty();
      }
      return limit.single().map(relation::region);
    }

    @Override
    public String print() {
      // A bare not(...) would be read as the opposite of a test, not as a condition to equal.
      boolean bare = relation == Relation.EQUAL && !(endpoint instanceof Expression.Not);
      return bare ? endpoint.print() : relation.sign() + " " + endpoint.print();
    }

    @Override
    public List<Expression> parts() {
      return List.of(endpoint);
    }
  }

  /** An interval between two endpoints. */
  record Between(Expression low, boolean lowIncluded, Expression high, boolean highIncluded)
      implements CellTest {
    @Override
    public Ternary outcome(PossibleValues input, Scope scope) {
      Relation from = lowIncluded ? Relation.AT_LEAST : Relation.GREATER;
      Relation to = highIncluded ? Relation.AT_MOST : Relation.LESS;
      return from.compare(input, low.evaluate(scope)).and(to.compare(input, high.evaluate(scope)));
    }

    @Override
    public Optional<ValueSet> region(ValueType type, Scope constants) {
      PossibleValues from = low.evaluate(constants);
      PossibleValues to = high.evaluate(constants);
      if (from.isNothing() || to.isNothing() || type == ValueType.YES_NO) {
        return Optional.empty();
      }
      Optional<Value> least = from.single().filter(value -> value.type() == type);
      Optional<Value> most = to.single().filter(value -> value.type() == type);
      return least.flatMap(
          a -> most.map(b -> ValueSet.between(type, a, lowIncluded, b, highIncluded)));
    }

    @Override
    public String print() {
      return (lowIncluded ? "[" : "(")
          + low.print()
          + ".."
          + high.print()
          + (highIncluded ? "]" : ")");
    }

    @Override
    public List<Expression> parts() {
      return List.of(low, high);
    }
  }

  /** Any of several tests; a list inside a list is one list. */
  record AnyOf(List<CellTest> tests) implements CellTest {
    public AnyOf {
      tests =
          tests.stream()
              .flatMap(test -> test instanceof AnyOf inner ? inner.tests.stream() : Stream.of(test))
              .toList();
    }

    @Override
    public Ternary outcome(PossibleValues input, Scope scope) {
      Ternary outcome = Ternary.of(false);
      for (CellTest test : tests) {
        outcome = outcome.or(test.outcome(input, scope));
      }
      return outcome;
    }

    @Override
    public Optional<ValueSet> region(ValueType type, Scope constants) {
      ValueSet union = ValueSet.none(type);
      for (CellTest test : tests) {
        Optional<ValueSet> region = test.region(type, constants);
        if (region.isEmpty()) {
          return region;
        }
        union = union.union(region.get());
      }
      return Optional.of(union);
    }

    @Override
    public String print() {
      return tests.stream().map(CellTest::print).collect(Collectors.joining(", "));
    }

    @Override
    public List<Expression> parts() {
      return tests.stream().flatMap(test -> test.parts().stream()).toList();
    }
  }

  /** None of the tests inside. */
  record NoneOf(CellTest inner) implements CellTest {
    @Override
    public Ternary outcome(PossibleValues input, Scope scope) {
      return inner.outcome(input, scope).not();
    }

    @Override
    public Optional<ValueSet> region(ValueType type, Scope constants) {
      return inner.region(type, constants).map(ValueSet::complement);
    }

    @Override
    public String print() {
      return "not(" + inner.print() + ")";
    }

    @Override
    public List<Expression> parts() {
      return inner.parts();
    }
  }

  /** A condition on the input, which stands in it as a question mark (FEEL beyond S-FEEL). */
  record Condition(Expression condition, Symbol input) implements CellTest {
    @Override
    public Ternary outcome(PossibleValues given, Scope scope) {
      Scope withInput = symbol -> symbol.equals(input) ? given : scope.valueOf(symbol);
      return Ternary.of(condition.evaluate(withInput));
    }

    @Override
    public Optional<ValueSet> region(ValueType type, Scope constants) {
      return Optional.empty();
    }

    @Override
    public String print() {
      return condition.print();
    }

    @Override
    public List<Expression> parts() {
      return List.of(condition);
    }

    @Override
    public Set<Symbol> references() {
      return Stream.of(condition)
          .flatMap(part -> part.references().stream())
          .filter(symbol -> !symbol.equals(input))
          .collect(Collectors.toUnmodifiableSet());
    }
  }
}
