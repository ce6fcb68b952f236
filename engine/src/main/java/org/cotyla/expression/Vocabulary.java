package org.cotyla.expression;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.cotyla.name.NameIndex;

/**
 * The names that cells and formulas may use, and the functions that formulas may call. Immutable.
 */
public final class Vocabulary {

  private final List<Symbol> symbols;
  private final NameIndex<Symbol> byName;
  private final NameIndex<FormulaFunction> functions;
  private final List<String> functionNames;

  public Vocabulary(Collection<Symbol> symbols, Collection<FormulaFunction> functions) {
    this.symbols = List.copyOf(symbols);
    this.byName = NameIndex.of(this.symbols, Symbol::name);
    this.functions = NameIndex.of(functions, FormulaFunction::name);
    this.functionNames = functions.stream().map(FormulaFunction::name).toList();
  }

  public List<Symbol> symbols() {
    return symbols;
  }

  public Optional<Symbol> symbol(String name) {
    return byName.find(name);
  }

  /** Every name, for suggestions. */
  public List<String> names() {
    return symbols.stream().map(Symbol::name).toList();
  }

  List<String> functionNames() {
    return functionNames;
  }

  Optional<NameIndex.Found<Symbol>> symbolAt(String text, int start) {
    return byName.longestAt(text, start);
  }

  Optional<NameIndex.Found<FormulaFunction>> functionAt(String text, int start) {
    return functions.longestAt(text, start);
  }
}
