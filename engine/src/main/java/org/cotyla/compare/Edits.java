package org.cotyla.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compare.Edit.Kind;
import org.cotyla.finite.Domain;
import org.cotyla.issue.CellRef;
import org.cotyla.name.NameIndex;
import org.cotyla.protocol.About;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Source;
import org.cotyla.value.Value;

/** Everything that is written otherwise, in the order of the workbook. */
final class Edits {

  private final Protocol old;
  private final Protocol young;
  private final List<Edit> edits = new ArrayList<>();

  private Edits(Protocol old, Protocol young) {
    this.old = old;
    this.young = young;
  }

  static List<Edit> between(Side old, Side young, Pairs pairs) {
    Edits edits = new Edits(old.protocol(), young.protocol());
    // What is written is looked at whole, also what speaks of cases that only one of the two takes.
    Side before = Side.of(old.number(), old.engine(), Map.of());
    Side after = Side.of(young.number(), young.engine(), Map.of());
    edits.about();
    edits.fields();
    edits.options();
    edits.calculations();
    edits.sources();
    for (DecisionTable table : young.protocol().decisions()) {
      pairs
          .oldOf(table)
          .ifPresentOrElse(
              was -> edits.edits.addAll(RowEdits.between(was, table, before, after)),
              () -> edits.add(Kind.DECISION_ADDED, table.name(), "", "", "", null, table.at()));
    }
    pairs
        .removed()
        .forEach(was -> edits.add(Kind.DECISION_REMOVED, was.name(), "", "", "", was.at(), null));
    edits.edits.addAll(SafeguardEdits.between(old.protocol(), young.protocol()));
    return edits.edits;
  }

  private void about() {
    About was = old.about();
    About is = young.about();
    compare(Kind.PROTOCOL, "protocol", "identifier", was.identifier(), is.identifier());
    compare(Kind.PROTOCOL, "protocol", "title", was.title(), is.title());
    compare(Kind.PROTOCOL, "protocol", "version", was.version(), is.version());
    compare(Kind.PROTOCOL, "protocol", "status", was.status().word(), is.status().word());
    compare(Kind.PROTOCOL, "protocol", "caution", was.caution(), is.caution());
    compare(
        Kind.STAGES,
        "protocol",
        "stages",
        String.join(", ", was.stages()),
        String.join(", ", is.stages()));
  }

  private void fields() {
    NameIndex<Field> before = NameIndex.of(old.fields(), Field::name);
    NameIndex<Field> after = NameIndex.of(young.fields(), Field::name);
    for (Field is : young.fields()) {
      before
          .find(is.name())
          .ifPresentOrElse(
              was -> field(was, is),
              () -> add(Kind.FIELD_ADDED, is.name(), "", "", limits(is), null, is.at()));
    }
    for (Field was : old.fields()) {
      if (after.find(was.name()).isEmpty()) {
        add(Kind.FIELD_REMOVED, was.name(), "", "", "", was.at(), null);
      }
    }
  }

  private void field(Field was, Field is) {
    Kind kind =
        is.isGiven() && !Domain.isAlike(was, is) ? Kind.FIELD_INCOMPARABLE : Kind.FIELD_CHANGED;
    part(
        kind,
        was,
        is,
        "kind",
        was.isGiven() ? "given" : "derived",
        is.isGiven() ? "given" : "derived");
    part(kind, was, is, "type", type(was), type(is));
    part(kind, was, is, "unit", unit(was), unit(is));
    part(kind, was, is, "stage", stage(old, was), stage(young, is));
    if (!was.allowed().equals(is.allowed())) {
      part(kind, was, is, "allowed", limits(was), limits(is));
    } else if (!was.symbol().choices().equals(is.symbol().choices())) {
      part(Kind.OPTION_MOVED, was, is, "order of values", limits(was), limits(is));
    }
    part(
        Kind.REASON_ONLY,
        was,
        is,
        "usual",
        was.usual().map(Object::toString).orElse("-"),
        is.usual().map(Object::toString).orElse("-"));
    part(Kind.REASON_ONLY, was, is, "group", was.group(), is.group());
    part(Kind.REASON_ONLY, was, is, "meaning", was.meaning(), is.meaning());
    part(Kind.REASON_ONLY, was, is, "source", sources(was.sources()), sources(is.sources()));
  }

  private void part(Kind kind, Field was, Field is, String part, String before, String after) {
    if (!before.equals(after)) {
      add(kind, is.name(), part, before, after, was.at(), is.at());
    }
  }

  private static String type(Field field) {
    return field.symbol().isChoice() ? "choice" : field.symbol().type().word();
  }

  private static String unit(Field field) {
    return field.unit().isEmpty() ? "none" : field.unit();
  }

  private static String stage(Protocol protocol, Field field) {
    return protocol.about().stages().get(field.stage());
  }

  private static String limits(Field field) {
    return field.symbol().isChoice()
        ? String.join(", ", field.symbol().choices())
        : field.allowed().plain();
  }

  private static String sources(List<String> keys) {
    return keys.isEmpty() ? "none" : String.join(", ", keys);
  }

  private void options() {
    NameIndex<Ranking> before = NameIndex.of(old.rankings(), Ranking::name);
    for (Ranking is : young.rankings()) {
      List<Option> was = before.find(is.name()).map(Ranking::options).orElse(List.of());
      options(was, is.options());
    }
    NameIndex<Ranking> after = NameIndex.of(young.rankings(), Ranking::name);
    for (Ranking was : old.rankings()) {
      if (after.find(was.name()).isEmpty()) {
        options(was.options(), List.of());
      }
    }
  }

  private void options(List<Option> before, List<Option> after) {
    NameIndex<Option> known = NameIndex.of(before, Option::name);
    NameIndex<Option> kept = NameIndex.of(after, Option::name);
    for (Option is : after) {
      known
          .find(is.name())
          .ifPresentOrElse(
              was -> option(was, is),
              () -> add(Kind.OPTION_ADDED, is.name(), "", "", is.meaning(), null, is.at()));
    }
    for (Option was : before) {
      if (kept.find(was.name()).isEmpty()) {
        add(Kind.OPTION_REMOVED, was.name(), "", "", "", was.at(), null);
      }
    }
    for (Option is : Sequence.moved(before, after, Option::name)) {
      add(Kind.OPTION_MOVED, is.name(), "its place, which settles ties", "", "", null, is.at());
    }
  }

  private void option(Option was, Option is) {
    part(Kind.OPTION_CHANGED, was, is, "needs", list(was.needs()), list(is.needs()));
    part(Kind.OPTION_CHANGED, was, is, "lead time", days(was), days(is));
    part(Kind.REASON_ONLY, was, is, "meaning", was.meaning(), is.meaning());
    part(Kind.REASON_ONLY, was, is, "source", sources(was.sources()), sources(is.sources()));
  }

  private void part(Kind kind, Option was, Option is, String part, String before, String after) {
    if (!before.equals(after)) {
      add(kind, is.name(), part, before, after, was.at(), is.at());
    }
  }

  private static String list(List<String> needs) {
    return needs.isEmpty() ? "nothing" : String.join("; ", needs);
  }

  private static String days(Option option) {
    return option.leadTimeDays().isEmpty() ? "none" : option.leadTimeDays().getAsInt() + " days";
  }

  private void calculations() {
    NameIndex<Calculation> before = NameIndex.of(old.calculations(), Calculation::name);
    NameIndex<Calculation> after = NameIndex.of(young.calculations(), Calculation::name);
    for (Calculation is : young.calculations()) {
      before
          .find(is.name())
          .ifPresentOrElse(
              was -> calculation(was, is),
              () ->
                  add(
                      Kind.CALCULATION_ADDED,
                      is.name(),
                      "",
                      "",
                      said(is),
                      null,
                      is.expressionAt()));
    }
    for (Calculation was : old.calculations()) {
      if (after.find(was.name()).isEmpty()) {
        add(Kind.CALCULATION_REMOVED, was.name(), "", "", "", was.expressionAt(), null);
      }
    }
  }

  private void calculation(Calculation was, Calculation is) {
    boolean constants = was.constant().isPresent() && is.constant().isPresent();
    boolean same =
        constants
            ? was.constant().equals(is.constant()) && was.unit().equals(is.unit())
            : said(was).equals(said(is));
    if (!same) {
      Kind kind = constants ? Kind.CONSTANT_CHANGED : Kind.CALCULATION_CHANGED;
      add(kind, is.name(), "", said(was), said(is), was.expressionAt(), is.expressionAt());
    }
    if (!was.meaning().equals(is.meaning())) {
      add(Kind.REASON_ONLY, is.name(), "meaning", was.meaning(), is.meaning(), was.at(), is.at());
    }
    String before = sources(was.sources());
    String after = sources(is.sources());
    if (!before.equals(after)) {
      add(Kind.REASON_ONLY, is.name(), "source", before, after, was.at(), is.at());
    }
  }

  private static String said(Calculation calculation) {
    String value =
        calculation
            .constant()
            .map(Value::plain)
            .orElse("`" + calculation.expression().print() + "`");
    boolean bare = calculation.unit().isEmpty() || calculation.unit().equals("1");
    return value + (bare ? "" : " " + calculation.unit());
  }

  private void sources() {
    NameIndex<Source> before = NameIndex.of(old.sources(), Source::key);
    for (Source is : young.sources()) {
      Optional<Source> was = before.find(is.key());
      String now = said(is);
      if (was.isEmpty()) {
        add(Kind.REASON_ONLY, is.key(), "source added", "", now, null, is.at());
      } else if (!said(was.get()).equals(now)) {
        add(Kind.REASON_ONLY, is.key(), "source", said(was.get()), now, was.get().at(), is.at());
      }
    }
    NameIndex<Source> after = NameIndex.of(young.sources(), Source::key);
    for (Source was : old.sources()) {
      if (after.find(was.key()).isEmpty()) {
        add(Kind.REASON_ONLY, was.key(), "source removed", "", "", was.at(), null);
      }
    }
  }

  private static String said(Source source) {
    return source.citation() + ", " + source.year() + " (" + source.certainty().word() + ")";
  }

  private void compare(Kind kind, String subject, String part, String was, String now) {
    if (!was.equals(now)) {
      add(kind, subject, part, was, now, null, null);
    }
  }

  private void add(
      Kind kind,
      String subject,
      String part,
      String was,
      String now,
      @org.jspecify.annotations.Nullable CellRef before,
      @org.jspecify.annotations.Nullable CellRef after) {
    edits.add(
        new Edit(
            kind,
            subject,
            part,
            was,
            now,
            Optional.ofNullable(before),
            Optional.ofNullable(after)));
  }
}
