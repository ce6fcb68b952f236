package org.cotyla.finite;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Relation;
import org.cotyla.expression.Scope;
import org.cotyla.expression.Symbol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;
import org.cotyla.value.ValueType;

/**
 * Which of two names, or of a name and a formula, is the larger: below, the same, above, or neither
 * where one of them is nothing. All tests of the two hang on this one question, so that a solver
 * cannot take a value to be above another for one test and below it for the next. Not thread-safe.
 */
final class Orders {

  private static final Value BELOW = Value.of(BigDecimal.ONE.negate());
  private static final Value SAME = Value.of(BigDecimal.ZERO);
  private static final Value ABOVE = Value.of(BigDecimal.ONE);

  private final ProtocolEncoding protocol;
  private final Map<String, Alternatives> known = new HashMap<>();

  Orders(ProtocolEncoding protocol) {
    this.protocol = protocol;
  }

  /** Holds when the test does; nothing when it is more than a question of order. */
  OptionalInt holds(Symbol input, CellTest test) {
    if (input.type() != ValueType.NUMBER && input.type() != ValueType.DATE) {
      return OptionalInt.empty();
    }
    if (test instanceof CellTest.Compared compared && compared.relation().isOrder()) {
      return OptionalInt.of(holds(input, compared.relation(), compared.endpoint()));
    }
    if (test instanceof CellTest.Between between) {
      Relation from = between.lowIncluded() ? Relation.AT_LEAST : Relation.GREATER;
      Relation to = between.highIncluded() ? Relation.AT_MOST : Relation.LESS;
      return OptionalInt.of(
          protocol
              .circuit()
              .and(holds(input, from, between.low()), holds(input, to, between.high())));
    }
    return test instanceof CellTest.AnyOf any ? anyOf(input, any) : OptionalInt.empty();
  }

  private OptionalInt anyOf(Symbol input, CellTest.AnyOf any) {
    List<Integer> some = new ArrayList<>();
    for (CellTest test : any.tests()) {
      OptionalInt one = holds(input, test);
      if (one.isEmpty()) {
        return one;
      }
      some.add(one.getAsInt());
    }
    return OptionalInt.of(protocol.circuit().or(some));
  }

  private int holds(Symbol input, Relation relation, Expression endpoint) {
    List<Value> signs =
        switch (relation) {
          case LESS -> List.of(BELOW);
          case AT_MOST -> List.of(BELOW, SAME);
          case GREATER -> List.of(ABOVE);
          case AT_LEAST -> List.of(ABOVE, SAME);
          case EQUAL, UNEQUAL -> throw new IllegalArgumentException("not a question of order");
        };
    boolean turned =
        endpoint instanceof Expression.Reference other && other.symbol().index() < input.index();
    Alternatives order =
        turned
            ? order(((Expression.Reference) endpoint).symbol(), new Expression.Reference(input))
            : order(input, endpoint);
    List<Value> wanted = turned ? signs.stream().map(Orders::opposite).toList() : signs;
    return order.within(ValueSet.of(ValueType.NUMBER, wanted), false);
  }

  private static Value opposite(Value sign) {
    return sign.equals(BELOW) ? ABOVE : sign.equals(ABOVE) ? BELOW : SAME;
  }

  /** How the name stands to what the formula gives. */
  Alternatives order(Symbol name, Expression formula) {
    String key = key(name, formula);
    Alternatives order = known.get(key);
    if (order == null) {
      order = protocol.sharedOrder(name, formula).orElseGet(() -> encode(name, formula));
      known.put(key, order);
    }
    return order;
  }

  private static String key(Symbol name, Expression formula) {
    return name.index() + " " + formula.print();
  }

  private Alternatives encode(Symbol name, Expression formula) {
    Set<Symbol> reads = new HashSet<>(formula.references());
    reads.add(name);
    Alternatives result =
        Alternatives.free(
            protocol.circuit(), order(symbol -> protocol.classes(symbol).all(), name, formula));
    protocol.add(
        new Dependent(
            reads,
            scope -> order(scope, name, formula),
            result,
            protocol.circuit().yes(),
            Optional.empty(),
            Optional.of(PossibleValues.of(SAME))));
    return result;
  }

  private static PossibleValues order(Scope scope, Symbol name, Expression formula) {
    PossibleValues left = scope.valueOf(name);
    PossibleValues right = formula.evaluate(scope);
    List<Value> signs = new ArrayList<>();
    boolean comparable = left.type() == right.type();
    if (comparable && !left.values().isEmpty() && !right.values().isEmpty()) {
      add(signs, BELOW, Relation.LESS.truth(left.values(), right.values()));
      add(signs, SAME, Relation.EQUAL.truth(left.values(), right.values()));
      add(signs, ABOVE, Relation.GREATER.truth(left.values(), right.values()));
    }
    boolean neither = signs.isEmpty() || left.orNothing() || right.orNothing();
    return new PossibleValues(ValueSet.of(ValueType.NUMBER, signs), neither);
  }

  private static void add(List<Value> signs, Value sign, Truth truth) {
    if (truth != Truth.FALSE) {
      signs.add(sign);
    }
  }
}
