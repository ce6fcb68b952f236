package org.cotyla.compare;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.compare.CanonicalTable.TestMeaning;
import org.cotyla.evaluate.Engine;
import org.cotyla.expression.Expression;
import org.cotyla.expression.PreparedTest;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Constants;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.ValueSet;

/**
 * One of the two protocols, with what is asked of it again and again.
 *
 * @param number its place in a search: 0 is the old one, 1 the new
 * @param shared what each given field can be in cases that both protocols take, by key
 * @param unsteady the names that may have another value in the other protocol, by key
 */
record Side(
    int number,
    Engine engine,
    Constants constants,
    Map<Symbol, Field> fields,
    Map<Symbol, String> units,
    Map<String, ValueSet> shared,
    Set<String> unsteady) {

  /**
   * @param shared what each given field can be in cases that both protocols take, by key
   */
  static Side of(int number, Engine engine, Map<String, ValueSet> shared) {
    Protocol protocol = engine.protocol();
    Map<Symbol, Field> fields = new HashMap<>();
    Map<Symbol, String> units = new HashMap<>();
    for (Field field : protocol.fields()) {
      fields.put(field.symbol(), field);
      units.put(field.symbol(), field.unit());
    }
    for (Calculation calculation : protocol.calculations()) {
      units.put(calculation.symbol(), calculation.unit());
    }
    return new Side(
        number, engine, new Constants(protocol), fields, units, Map.copyOf(shared), Set.of());
  }

  Side unsteady(Set<String> names) {
    return new Side(number, engine, constants, fields, units, shared, Set.copyOf(names));
  }

  /** Whether the formula can give something else in the other protocol for what it reads. */
  boolean isUnsteady(Expression expression) {
    return expression.references().stream()
        .anyMatch(symbol -> unsteady.contains(Names.key(symbol.name())));
  }

  Protocol protocol() {
    return engine.protocol();
  }

  Optional<Symbol> symbol(String name) {
    return protocol().vocabulary().symbol(name);
  }

  boolean isGiven(Symbol symbol) {
    Field field = fields.get(symbol);
    return field != null && field.isGiven();
  }

  String unit(Symbol symbol) {
    String unit = units.getOrDefault(symbol, "");
    return unit.equals("1") ? "" : unit;
  }

  /** Everything that the name can be, as far as its definition says. */
  PossibleValues all(Symbol symbol) {
    Field field = fields.get(symbol);
    if (field != null && field.isGiven()) {
      ValueSet allowed = shared.getOrDefault(Names.key(field.name()), field.allowed());
      return new PossibleValues(allowed, field.stage() > 0);
    }
    if (symbol.isChoice()) {
      return new PossibleValues(
          ValueSet.of(
              symbol.type(), symbol.choices().stream().map(org.cotyla.value.Value::of).toList()),
          true);
    }
    return new PossibleValues(ValueSet.all(symbol.type()), true);
  }

  /** When the test holds; nothing when it always does. A column of a constant has its value. */
  Optional<TestMeaning> meaning(Symbol input, PreparedTest test) {
    if (test.isAnything()) {
      return Optional.empty();
    }
    String column = constants.named(Set.of(input));
    Optional<ValueSet> region = test.region();
    if (region.isEmpty()) {
      String text = test.test().print() + constants.named(test.references()) + column;
      return Optional.of(new TestMeaning(Optional.empty(), text));
    }
    PossibleValues all = all(input);
    ValueSet holds = region.get().intersect(all.values());
    boolean always = holds.equals(all.values());
    boolean forNothing = !all.orNothing() || test.forNothing() == Truth.TRUE;
    String rest = (all.orNothing() && forNothing ? "or nothing" : "") + column;
    return always && forNothing
        ? Optional.empty()
        : Optional.of(new TestMeaning(Optional.of(holds), rest));
  }

  /** What a formula says: its value when that is constant, else its text. */
  String meaning(Expression expression) {
    return constants
        .of(expression)
        .map(value -> value.isNothing() ? "nothing" : value.single().orElseThrow().literal())
        .orElseGet(() -> "= " + expression.print() + constants.named(expression.references()));
  }
}
