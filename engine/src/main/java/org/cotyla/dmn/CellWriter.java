package org.cotyla.dmn;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import org.cotyla.expression.CellTest;
import org.cotyla.expression.CellTest.AnyOf;
import org.cotyla.expression.CellTest.Anything;
import org.cotyla.expression.CellTest.Between;
import org.cotyla.expression.CellTest.Compared;
import org.cotyla.expression.CellTest.Condition;
import org.cotyla.expression.CellTest.NoneOf;
import org.cotyla.expression.Expression;
import org.cotyla.expression.Expression.Arithmetic;
import org.cotyla.expression.Expression.Call;
import org.cotyla.expression.Expression.Comparison;
import org.cotyla.expression.Expression.Conditional;
import org.cotyla.expression.Expression.Literal;
import org.cotyla.expression.Expression.Logic;
import org.cotyla.expression.Expression.Membership;
import org.cotyla.expression.Expression.Negation;
import org.cotyla.expression.Expression.Not;
import org.cotyla.expression.Expression.Nothing;
import org.cotyla.expression.Expression.Reference;
import org.cotyla.expression.Relation;
import org.cotyla.expression.Symbol;
import org.cotyla.value.ValueType;

/** Writes tests and formulas as S-FEEL, with names and values as a wording has them. */
final class CellWriter {

  private final Wording wording;

  CellWriter(Wording wording) {
    this.wording = wording;
  }

  /** The cell of a test under the input. */
  String test(CellTest test, Symbol input) {
    if (test instanceof NoneOf none) {
      return "not(" + inner(none.inner(), input) + ")";
    }
    boolean otherThanOne =
        test instanceof Compared compared
            && compared.relation() == Relation.UNEQUAL
            && !isOpenAnswer(compared.endpoint());
    return otherThanOne
        ? "not(" + alone(((Compared) test).endpoint(), input) + ")"
        : inner(test, input);
  }

  private String inner(CellTest test, Symbol input) {
    if (test instanceof Anything) {
      return "-";
    }
    if (test instanceof AnyOf any) {
      return any.tests().stream().map(one -> inner(one, input)).collect(joining(", "));
    }
    if (test instanceof Between between) {
      return interval(between);
    }
    if (test instanceof Compared compared) {
      return compared(compared, input);
    }
    if (test instanceof Condition condition) {
      return ownComparison(condition)
          .map(own -> compared(own, input))
          .orElseGet(() -> formula(condition.condition()));
    }
    return "not(" + inner(((NoneOf) test).inner(), input) + ")";
  }

  /** The plain test that a condition of the form {@code ? < 5} is. */
  static Optional<Compared> ownComparison(Condition condition) {
    boolean isOwn =
        condition.condition() instanceof Comparison comparison
            && comparison.left().equals(new Reference(condition.input()));
    return isOwn
        ? Optional.of(
            new Compared(
                ((Comparison) condition.condition()).relation(),
                ((Comparison) condition.condition()).right()))
        : Optional.empty();
  }

  private String compared(Compared test, Symbol input) {
    Expression endpoint = test.endpoint();
    if (test.relation() == Relation.UNEQUAL) {
      return wording.otherThan(operand(endpoint));
    }
    if (test.relation() == Relation.EQUAL) {
      return isOpenAnswer(endpoint)
          ? wording.sameAnswer(operand(endpoint))
          : alone(endpoint, input);
    }
    return test.relation().sign() + " " + endpoint(endpoint);
  }

  private String alone(Expression endpoint, Symbol input) {
    return endpoint instanceof Literal literal
        ? wording.alone(literal.value(), input)
        : endpoint(endpoint);
  }

  private String endpoint(Expression endpoint) {
    String text = formula(endpoint);
    return text.startsWith("if ") ? "(" + text + ")" : text;
  }

  /** A formula that may be true or false, and so could be taken for a condition by itself. */
  private static boolean isOpenAnswer(Expression endpoint) {
    boolean isKnown = endpoint instanceof Literal || endpoint instanceof Nothing;
    return endpoint.type() == ValueType.YES_NO && !isKnown;
  }

  private String interval(Between between) {
    return (between.lowIncluded() ? "[" : "(")
        + operand(between.low())
        + ".."
        + operand(between.high())
        + (between.highIncluded() ? "]" : ")");
  }

  /** A formula that stands alone; what it is made of stands in brackets. */
  String formula(Expression given) {
    Expression formula = wording.simplified(given);
    List<Expression> guards = NullGuards.isStrict(formula) ? wording.guards(formula) : List.of();
    if (guards.isEmpty()) {
      return plain(formula);
    }
    String questions = guards.stream().map(this::formula).collect(joining(" or "));
    return "if " + questions + " then null else " + plain(formula);
  }

  private String plain(Expression formula) {
    if (formula instanceof Literal literal) {
      return wording.literal(literal.value());
    }
    if (formula instanceof Nothing) {
      return "null";
    }
    if (formula instanceof Reference reference) {
      return wording.name(reference.symbol());
    }
    if (formula instanceof Call call) {
      return wording.call(call, () -> call.arguments().stream().map(this::argument).toList());
    }
    if (formula instanceof Not not) {
      return "not(" + formula(not.operand()) + ")";
    }
    if (formula instanceof Negation negation) {
      return "-" + part(negation.operand());
    }
    if (formula instanceof Arithmetic arithmetic) {
      return part(arithmetic.left())
          + " "
          + arithmetic.sign().sign()
          + " "
          + part(arithmetic.right());
    }
    if (formula instanceof Comparison comparison) {
      return joined(comparison.left(), comparison.relation().sign(), comparison.right());
    }
    if (formula instanceof Logic logic) {
      return joined(logic.left(), logic.conjunction() ? "and" : "or", logic.right());
    }
    if (formula instanceof Membership membership) {
      return membership(membership.operand(), membership.test());
    }
    Conditional conditional = (Conditional) formula;
    return "if "
        + formula(conditional.condition())
        + " then "
        + formula(conditional.whenTrue())
        + " else "
        + formula(conditional.otherwise());
  }

  private String joined(Expression left, String sign, Expression right) {
    return operand(left) + " " + sign + " " + operand(right);
  }

  private String operand(Expression part) {
    return inBrackets(wording.simplified(part), formula(part));
  }

  /** A part of what is nothing when the part is: the questions were asked for the whole. */
  private String part(Expression part) {
    return inBrackets(wording.simplified(part), argument(part));
  }

  private String argument(Expression part) {
    return NullGuards.isStrict(part) ? plain(part) : formula(part);
  }

  private static String inBrackets(Expression part, String text) {
    boolean isWord =
        part instanceof Reference
            || part instanceof Call
            || part instanceof Not
            || part instanceof Nothing
            || part instanceof Literal;
    return isWord && !text.startsWith("-") && !text.startsWith("if ") ? text : "(" + text + ")";
  }

  private String membership(Expression operand, CellTest test) {
    if (test instanceof NoneOf none) {
      return "not(" + membership(operand, none.inner()) + ")";
    }
    String left = operand(operand);
    if (test instanceof Compared compared) {
      return left + " " + compared.relation().sign() + " " + operand(compared.endpoint());
    }
    if (test instanceof Between between) {
      return left + " in " + interval(between);
    }
    if (test instanceof AnyOf any) {
      return any.tests().stream()
          .map(one -> "(" + membership(operand, one) + ")")
          .collect(joining(" or "));
    }
    return "true";
  }
}
