package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import org.cotyla.expression.Symbol;
import org.cotyla.finite.RegionWords;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.Demand;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Safeguard;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Truth;
import org.cotyla.value.Value;
import org.cotyla.value.ValueSet;

/**
 * Safeguards as sentences: {@code hemispherical cup must never come first when defect class is 3A
 * or 3B}. Immutable.
 */
final class SafeguardWords {

  private final RegionWords regions;
  private final NameIndex<Field> fields;

  SafeguardWords(Protocol protocol) {
    this.regions = new RegionWords(protocol);
    this.fields = NameIndex.of(protocol.fields(), Field::name);
  }

  String sentence(Safeguard safeguard) {
    List<String> tests =
        safeguard.tests().stream()
            .map(condition -> met(condition.input().symbol(), condition.test(), "is", "is not"))
            .toList();
    return demand(safeguard.demand())
        + (tests.isEmpty() ? " in every case" : " when " + String.join(" and ", tests));
  }

  private String demand(Demand demand) {
    if (demand instanceof Demand.NeverFirst never) {
      return never.option() + " must never come first";
    }
    if (demand instanceof Demand.RuledOut ruledOut) {
      return ruledOut.option() + " must be ruled out";
    }
    if (demand instanceof Demand.RowCounts row) {
      return row.row() + " must be shown";
    }
    if (demand instanceof Demand.TextShown shown) {
      return "'" + shown.text() + "' must be shown";
    }
    Demand.Holds holds = (Demand.Holds) demand;
    return met(holds.name(), holds.test(), "must be", "must not be");
  }

  private String met(Symbol name, Row.Test test, String is, String isNot) {
    Optional<ValueSet> region = test.prepared().region();
    if (region.isEmpty()) {
      String must = is.equals("is") ? " meets " : " must meet ";
      return name.name() + must + TestWords.plain(test);
    }
    ValueSet all = all(name);
    ValueSet met = all.intersect(region.get());
    ValueSet rest = all.intersect(region.get().complement());
    boolean nothing = test.prepared().forNothing() == Truth.TRUE;
    // Only a test that something is not so is met by nothing at all.
    if (nothing && rest.isFinite() && !rest.isEmpty()) {
      return said(name, isNot, rest, false);
    }
    return said(name, is, met, nothing);
  }

  private String said(Symbol name, String verb, ValueSet values, boolean orNothing) {
    return name.name()
        + " "
        + verb
        + " "
        + regions.values(name, new PossibleValues(values, orNothing));
  }

  private ValueSet all(Symbol name) {
    if (name.isChoice()) {
      return name.choices().stream()
          .map(choice -> ValueSet.of(Value.of(choice)))
          .reduce(ValueSet.none(name.type()), ValueSet::union);
    }
    return fields.find(name.name()).map(Field::allowed).orElse(ValueSet.all(name.type()));
  }
}
