package org.cotyla.dmn;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cotyla.dmn.ImportedTypes.Kind;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.value.ValueType;

/** The names that a file's cells use, and what stands for each in the workbook. Not thread-safe. */
final class ImportedNames {

  private final Map<String, Symbol> byName = new LinkedHashMap<>();
  private final Map<Symbol, String> inWorkbook = new LinkedHashMap<>();
  private final Map<Symbol, Kind> kinds = new LinkedHashMap<>();
  private final Set<String> taken = new HashSet<>();

  /** A name of the file, and its name in the workbook made unique there. */
  String define(String fileName, String workbookName, Kind kind) {
    String unique = unique(workbookName);
    put(fileName, unique, kind);
    return unique;
  }

  /** A name of the file that stands for a formula. */
  void stands(String fileName, String formula, ValueType type) {
    put(fileName, "(" + formula + ")", new Kind(type, java.util.List.of(), ""));
  }

  private void put(String fileName, String text, Kind kind) {
    Symbol symbol = new Symbol(fileName, byName.size(), kind.type(), java.util.List.of());
    if (byName.putIfAbsent(Names.key(fileName), symbol) == null) {
      inWorkbook.put(symbol, text);
      kinds.put(symbol, kind);
    }
  }

  String unique(String workbookName) {
    String unique = workbookName;
    for (int i = 2; !taken.add(Names.key(unique)); i++) {
      unique = workbookName + " " + i;
    }
    return unique;
  }

  Optional<Symbol> symbol(String fileName) {
    return Optional.ofNullable(byName.get(Names.key(fileName)));
  }

  Optional<Kind> kind(Symbol symbol) {
    return Optional.ofNullable(kinds.get(symbol));
  }

  String inWorkbook(Symbol symbol) {
    return inWorkbook.getOrDefault(symbol, symbol.name());
  }

  ImportedCells cells() {
    Set<Symbol> choices = new HashSet<>();
    kinds.forEach(
        (symbol, kind) -> {
          if (!kind.choices().isEmpty()) {
            choices.add(symbol);
          }
        });
    return new ImportedCells(inWorkbook, choices);
  }
}
