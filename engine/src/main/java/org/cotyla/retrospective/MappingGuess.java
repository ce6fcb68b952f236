package org.cotyla.retrospective;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.retrospective.Column.Found;
import org.cotyla.unit.Units;
import org.cotyla.value.ValueType;

/**
 * Guesses from its heading what a column says. A field is found by its whole name, or by part of it
 * where only one field has that part and the column's unit fits.
 */
final class MappingGuess {

  private static final int SHORTEST_PART = 3;
  private static final List<String> DONE = List.of("%s", "%s done", "%s chosen", "%s used");

  private final Protocol protocol;
  private final NameIndex<Field> fields;
  private final Map<String, Meaning> others = new LinkedHashMap<>();

  MappingGuess(Protocol protocol) {
    this.protocol = protocol;
    this.fields = NameIndex.of(protocol.fields(), Field::name);
    for (Ranking ranking : protocol.rankings()) {
      for (String wording : DONE) {
        String heading = wording.formatted(ranking.name());
        others.putIfAbsent(Names.key(heading), new Meaning.Done(ranking));
      }
    }
    for (Meaning.Of meaning : Meaning.Of.values()) {
      meaning.headings().forEach(heading -> others.putIfAbsent(Names.key(heading), meaning));
    }
  }

  Column column(int index, String heading) {
    Optional<Field> whole = fields.find(heading);
    HeadingWords words =
        whole.isPresent() ? new HeadingWords(heading, Optional.empty()) : HeadingWords.of(heading);
    Optional<Field> named = fields.find(words.name());
    Meaning other = others.get(Names.key(heading));
    if (named.isPresent() && (named.get().isGiven() || other == null)) {
      Meaning meaning = finding(named.get(), words);
      Optional<String> unit = meaning instanceof Meaning.Finding ? words.unit() : Optional.empty();
      return new Column(index, heading, meaning, unit, Found.BY_NAME);
    }
    if (other != null) {
      return new Column(index, heading, other, Optional.empty(), Found.BY_NAME);
    }
    List<Field> part =
        words.name().length() < SHORTEST_PART
            ? List.of()
            : protocol.givenFields().stream()
                .filter(field -> words.isPartOf(field.name()) && fits(field, words.unit()))
                .toList();
    if (part.size() == 1) {
      return new Column(
          index, heading, new Meaning.Finding(part.get(0)), words.unit(), Found.BY_PART);
    }
    return new Column(index, heading, unknown(words, part), Optional.empty(), Found.BY_NAME);
  }

  private static Meaning finding(Field field, HeadingWords words) {
    if (!field.isGiven()) {
      return new Meaning.Ignored("the protocol decides `" + field.name() + "` itself");
    }
    return fits(field, words.unit())
        ? new Meaning.Finding(field)
        : new Meaning.Ignored(
            "its unit does not fit `"
                + field.name()
                + "`"
                + (field.unit().isEmpty() ? "" : ", which is in " + field.unit()));
  }

  static boolean fits(Field field, Optional<String> unit) {
    return unit.isEmpty()
        || (field.symbol().type() == ValueType.NUMBER
            && Units.convert(BigDecimal.ONE, unit.get(), field.unit()).isPresent());
  }

  private Meaning unknown(HeadingWords words, List<Field> part) {
    if (!part.isEmpty()) {
      List<String> names = part.stream().map(Field::name).toList();
      return new Meaning.Ignored("it may be any of: " + String.join(", ", names));
    }
    List<String> names = protocol.givenFields().stream().map(Field::name).toList();
    return new Meaning.Ignored(
        NearestWord.to(words.name(), names)
            .map(nearest -> "no such field; did you mean `" + nearest + "`?")
            .orElse("no such field"));
  }
}
