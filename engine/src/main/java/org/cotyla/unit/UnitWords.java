package org.cotyla.unit;

import java.util.Optional;
import java.util.regex.Pattern;
import org.fhir.ucum.BaseUnit;
import org.fhir.ucum.Component;
import org.fhir.ucum.DefinedUnit;
import org.fhir.ucum.ExpressionParser;
import org.fhir.ucum.Factor;
import org.fhir.ucum.Operator;
import org.fhir.ucum.Symbol;
import org.fhir.ucum.Term;
import org.fhir.ucum.UcumException;
import org.fhir.ucum.Unit;

/**
 * Amounts as people read them: UCUM's own print symbols in place of its codes ({@code 40°}, {@code
 * 12 μg/L}), and the names of days, months and years, whose symbols are known to few. Data keep the
 * codes. Thread-safe.
 */
public final class UnitWords {

  private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final Pattern MARKUP = Pattern.compile("<[^>]*>");

  private UnitWords() {}

  /**
   * The amount with its unit.
   *
   * @param amount the number, or words about numbers
   * @param code the unit's code in UCUM; empty or {@code 1} for none; what is no unit stays as it
   *     is
   */
  public static String of(String amount, String code) {
    if (code.isEmpty() || code.equals("1")) {
      return amount;
    }
    Optional<Term> term = Units.isKnown(code) ? parsed(code) : Optional.empty();
    Optional<Unit> single = term.flatMap(UnitWords::single);
    if (single.filter(UnitWords::isOfTheCalendar).isPresent()) {
      return amount + " " + name(single.get()) + (amount.equals("1") ? "" : "s");
    }
    String symbol = term.map(UnitWords::symbols).filter(text -> !text.isBlank()).orElse(code);
    boolean attached = single.map(Unit::getProperty).filter("plane angle"::equals).isPresent();
    return amount + (attached && !Character.isLetter(symbol.charAt(0)) ? "" : " ") + symbol;
  }

  /** What the parser drops (remarks in braces) must not be lost, so such a code stays as it is. */
  private static Optional<Term> parsed(String code) {
    try {
      return code.contains("{")
          ? Optional.empty()
          : Optional.of(new ExpressionParser(Units.model()).parse(code));
    } catch (UcumException unreadable) {
      return Optional.empty();
    }
  }

  /** The one unit of a code that has no prefix, exponent or second part. */
  private static Optional<Unit> single(Term term) {
    return !term.hasOp()
            && !term.hasTerm()
            && term.getComp() instanceof Symbol symbol
            && !symbol.hasPrefix()
            && symbol.getExponent() == 1
        ? Optional.of(symbol.getUnit())
        : Optional.empty();
  }

  /** Of the units of time only the second is metric, and has a symbol that everybody reads. */
  private static boolean isOfTheCalendar(Unit unit) {
    return unit instanceof DefinedUnit defined
        && !defined.isMetric()
        && "time".equals(unit.getProperty());
  }

  private static String name(Unit unit) {
    return unit.getNames().get(0);
  }

  private static String symbols(Term term) {
    StringBuilder text = new StringBuilder();
    if (term.hasComp()) {
      text.append(symbol(term.getComp()));
    }
    if (term.hasOp()) {
      text.append(term.getOp() == Operator.DIVISION ? '/' : '·');
    }
    if (term.hasTerm()) {
      text.append(symbols(term.getTerm()));
    }
    return text.toString();
  }

  private static String symbol(Component component) {
    if (component instanceof Symbol symbol) {
      String prefix = symbol.hasPrefix() ? plain(symbol.getPrefix().getPrintSymbol()) : "";
      return prefix + symbol(symbol.getUnit()) + exponent(symbol.getExponent());
    }
    if (component instanceof Factor factor) {
      return Integer.toString(factor.getValue());
    }
    return component instanceof Term inner ? "(" + symbols(inner) + ")" : "";
  }

  private static String symbol(Unit unit) {
    String symbol = unit.getPrintSymbol();
    boolean missing = symbol == null || symbol.isBlank();
    return missing || unit instanceof BaseUnit ? unit.getCode() : plain(symbol);
  }

  /**
   * The definitions hold a few symbols with marks for slanted letters, and spaces that never break.
   */
  private static String plain(String symbol) {
    return MARKUP.matcher(symbol).replaceAll("").replace('\u00a0', ' ').strip();
  }

  private static String exponent(int exponent) {
    if (exponent == 1) {
      return "";
    }
    StringBuilder raised = new StringBuilder(exponent < 0 ? "⁻" : "");
    for (char digit : Integer.toString(Math.abs(exponent)).toCharArray()) {
      raised.append(SUPERSCRIPTS.charAt(digit - '0'));
    }
    return raised.toString();
  }
}
