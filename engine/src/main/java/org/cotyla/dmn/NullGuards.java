package org.cotyla.dmn;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.cotyla.expression.ArithmeticSign;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Expression.Arithmetic;
import org.cotyla.expression.Expression.Call;
import org.cotyla.expression.Expression.Comparison;
import org.cotyla.expression.Expression.Conditional;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Logic;
import org.cotyla.expression.Expression.Negation;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.expression.Expression.Reference;
import org.cotyla.expression.Relation;
import org.cotyla.expression.Symbol;
import org.cotyla.value.Value;

/**
 * A function of nothing and a division by zero give nothing here and in the standard, but some
 * engines take them for faults and stop. So an exported formula asks first; on the way back in the
 * question is left out again, since it changes no result.
 */
final class NullGuards {

  private static final Expression ZERO = new Literal(Value.of(0));

  private NullGuards() {}

  /**
   * The questions of which none may be answered with yes before the formula is worked out.
   *
   * @param formula a formula
   * @param isHost whether a call is not worked out in the model but given to it
   * @param neverNothing names that always have a value
   */
  static List<Expression> of(
      Expression formula, Predicate<Call> isHost, Predicate<Symbol> neverNothing) {
    Set<Expression> guards = new LinkedHashSet<>();
    collect(formula, false, isHost, neverNothing, guards);
    return new ArrayList<>(guards);
  }

  private static void collect(
      Expression part,
      boolean inCall,
      Predicate<Call> isHost,
      Predicate<Symbol> neverNothing,
      Set<Expression> guards) {
    if (part instanceof Literal) {
      return;
    }
    if (part instanceof Reference reference) {
      if (inCall && !neverNothing.test(reference.symbol())) {
        guards.add(isNothing(part));
      }
      return;
    }
    boolean isGiven = part instanceof Call call && isHost.test(call);
    boolean passesNothingOn = isStrict(part) && !isGiven;
    if (passesNothingOn) {
      boolean within = inCall || part instanceof Call;
      part.parts().forEach(inner -> collect(inner, within, isHost, neverNothing, guards));
    }
    boolean mayFail = !passesNothingOn || isPartial(part);
    if (inCall && mayFail) {
      guards.add(isNothing(part));
    }
    outOfRange(part).ifPresent(guards::add);
  }

  private static Expression isNothing(Expression part) {
    return new Comparison(Relation.EQUAL, part, new Nothing(part.type()));
  }

  /** The question whether the part has no result for the numbers that it is given. */
  private static Optional<Expression> outOfRange(Expression part) {
    if (part instanceof Arithmetic arithmetic
        && arithmetic.sign() == ArithmeticSign.DIVIDE
        && (!(arithmetic.right() instanceof Literal) || arithmetic.right().equals(ZERO))) {
      return Optional.of(new Comparison(Relation.EQUAL, arithmetic.right(), ZERO));
    }
    boolean isRoot = part instanceof Call call && call.function().name().equals("sqrt");
    return isRoot
        ? Optional.of(new Comparison(Relation.LESS, part.parts().get(0), ZERO))
        : Optional.empty();
  }

  /** Whether the part is nothing as soon as one of its own parts is. */
  static boolean isStrict(Expression part) {
    return part instanceof Call || part instanceof Arithmetic || part instanceof Negation;
  }

  /** Whether the part can be nothing although none of its own parts is. */
  private static boolean isPartial(Expression part) {
    boolean isPower =
        part instanceof Arithmetic arithmetic && arithmetic.sign() == ArithmeticSign.POWER;
    return isPower || !isStrict(part);
  }

  /** The formula without questions whose answer it gives by itself. */
  static Expression without(Expression formula) {
    if (formula instanceof Conditional conditional
        && conditional.whenTrue() instanceof Nothing
        && questions(conditional.condition()).stream()
            .allMatch(question -> answers(conditional.otherwise(), question))) {
      return conditional.otherwise();
    }
    return formula;
  }

  private static List<Expression> questions(Expression condition) {
    if (condition instanceof Logic logic && !logic.conjunction()) {
      List<Expression> both = new ArrayList<>(questions(logic.left()));
      both.addAll(questions(logic.right()));
      return both;
    }
    return List.of(condition);
  }

  /** Whether the part is nothing by itself where the answer to the question is yes. */
  private static boolean answers(Expression part, Expression question) {
    boolean own =
        outOfRange(part).filter(question::equals).isPresent()
            || (question instanceof Comparison comparison
                && comparison.relation() == Relation.EQUAL
                && comparison.right() instanceof Nothing
                && comparison.left().equals(part));
    return own
        || (isStrict(part) && part.parts().stream().anyMatch(inner -> answers(inner, question)));
  }
}
