package org.cotyla.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Firing;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Source;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.Value;

/** Small pieces of sentences. */
public final class Words {

  private static final int DIGEST_SHOWN = "sha256:".length() + 12;

  private Words() {}

  /** {@code a}, {@code a or b}, {@code a, b or c}. */
  public static String or(List<String> words) {
    return joined(words, " or ");
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  public static String and(List<String> words) {
    return joined(words, " and ");
  }

  private static String joined(List<String> words, String last) {
    int end = words.size() - 1;
    return end < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, end)) + last + words.get(end);
  }

  /** The first of the words, and how many more there are. */
  public static String some(List<String> words, int most) {
    return words.size() <= most
        ? String.join(", ", words)
        : String.join(", ", words.subList(0, most)) + " and " + (words.size() - most) + " more";
  }

  /** {@code 1 row}, {@code 2 rows}. */
  public static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }

  /** {@code 1 entry}, {@code 2 entries}. */
  public static String count(int number, String one, String several) {
    return number + " " + (number == 1 ? one : several);
  }

  /** The start of a digest, enough to tell two apart. */
  public static String digestInShort(String digest) {
    return digest.length() <= DIGEST_SHOWN ? digest : digest.substring(0, DIGEST_SHOWN);
  }

  /** What a datum can be, a choice's values in the order of the protocol. */
  public static String values(PossibleValues possible, Symbol symbol) {
    if (possible.isNothing()) {
      return "nothing";
    }
    List<String> words;
    if (possible.values().isFinite()) {
      List<String> choices = symbol.choices();
      words =
          possible.values().values().stream()
              .map(Value::plain)
              .sorted(Comparator.comparingInt(choices::indexOf))
              .collect(Collectors.toList());
    } else {
      words =
          possible.values().parts().stream().map(part -> part.plain()).collect(Collectors.toList());
    }
    if (possible.orNothing()) {
      words.add("nothing");
    }
    return or(words);
  }

  /** What a row gives. */
  public static String results(Firing firing) {
    return results(firing.table(), firing.results());
  }

  /** What a row of a table gives in each of its output columns. */
  public static String results(DecisionTable table, List<PossibleValues> values) {
    List<String> results = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      results.add(values(values.get(i), table.outputs().get(i).symbol()));
    }
    return String.join("; ", results);
  }

  /** A row's id with its sources, each with its certainty in short. */
  public static String reference(Row row, Protocol protocol) {
    String sources =
        row.sources().stream()
            .map(key -> protocol.source(key).map(Words::inShort).orElse(key))
            .collect(Collectors.joining(", "));
    return "[" + row.id() + (sources.isEmpty() ? "" : "; " + sources) + "]";
  }

  /** {@code SMITH-2001 (low)}; only the certainty when the key says the same. */
  private static String inShort(Source source) {
    String certainty = source.certainty().word();
    boolean same = Names.key(source.key()).equals(Names.key(certainty));
    return same ? certainty : source.key() + " (" + certainty + ")";
  }
}
