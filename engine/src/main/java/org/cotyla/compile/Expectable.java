package org.cotyla.compile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.DecisionDraft;
import org.cotyla.draft.Text;
import org.cotyla.expression.Symbol;
import org.cotyla.expression.Vocabulary;
import org.cotyla.issue.Issues;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.ExpectWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.HitPolicy;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.TestCase.Expected;
import org.cotyla.value.Value;

/** What the answer to a case can be expected to be, and how that is written in a cell. */
final class Expectable {

  private static final String NOTHING = "nothing";
  private static final String CERTAIN = " is certain";

  /** What a column of expectations is about, and the words that may stand beneath it. */
  record Subject(String about, Kind kind, List<String> words) {}

  private enum Kind {
    ONE_WORD,
    WORDS,
    NUMBERS,
    ROWS,
    FREE_TEXT
  }

  private final Map<String, Subject> subjects = new HashMap<>();
  private final List<String> names = new ArrayList<>();
  private final WrittenResults results;
  private final Issues issues;

  Expectable(
      Vocabulary vocabulary,
      List<Field> fields,
      Map<String, List<Option>> rankings,
      List<DecisionDraft> decisions,
      WrittenResults results,
      Issues issues) {
    this.results = results;
    this.issues = issues;
    List<String> options =
        rankings.values().stream().flatMap(List::stream).map(Option::name).toList();
    List<String> given = fields.stream().filter(Field::isGiven).map(Field::name).toList();
    for (ExpectWord word : ExpectWord.values()) {
      add(
          switch (word.of()) {
            case YES_NO -> new Subject(word.word(), Kind.ONE_WORD, List.of("yes", "no"));
            case OPTIONS -> new Subject(word.word(), Kind.WORDS, options);
            case ROWS -> new Subject(word.word(), Kind.ROWS, List.of());
            case FIELDS -> new Subject(word.word(), Kind.WORDS, given);
          });
    }
    rankings.forEach(
        (ranking, ranked) -> {
          String first = NamedThings.firstName(ranking);
          add(new Subject(first, Kind.ONE_WORD, withNothing(ranked)));
          add(new Subject(first + CERTAIN, Kind.ONE_WORD, List.of("yes", "no")));
        });
    vocabulary.symbols().stream()
        .filter(symbol -> given.stream().noneMatch(symbol.name()::equals))
        .forEach(symbol -> add(ofValue(symbol)));
    decisions.stream()
        .filter(Expectable::givesList)
        .forEach(decision -> add(new Subject(decision.name().text(), Kind.ROWS, List.of())));
  }

  private static List<String> withNothing(List<Option> options) {
    List<String> words = new ArrayList<>(options.stream().map(Option::name).toList());
    words.add(NOTHING);
    return words;
  }

  private static boolean givesList(DecisionDraft decision) {
    return decision.ranks().isNone()
        && HitPolicy.of(decision.hitPolicy().text()).filter(HitPolicy::isList).isPresent();
  }

  private static Subject ofValue(Symbol symbol) {
    if (symbol.isChoice()) {
      List<String> words = new ArrayList<>(symbol.choices());
      words.add(NOTHING);
      return new Subject(symbol.name(), Kind.WORDS, words);
    }
    return switch (symbol.type()) {
      case YES_NO -> new Subject(symbol.name(), Kind.WORDS, List.of("yes", "no", NOTHING));
      case NUMBER -> new Subject(symbol.name(), Kind.NUMBERS, List.of());
      case TEXT, DATE -> new Subject(symbol.name(), Kind.FREE_TEXT, List.of());
    };
  }

  private void add(Subject subject) {
    if (subjects.putIfAbsent(Names.key(subject.about()), subject) == null) {
      names.add(subject.about());
    }
  }

  /** What the column is about, or nothing when there is no such thing, which is reported. */
  Optional<Subject> subject(Text name) {
    Optional<Subject> subject = Optional.ofNullable(subjects.get(Names.key(name.text())));
    if (subject.isEmpty() && !name.isBlank()) {
      issues.error(
          "W221",
          name.at(),
          "`" + name.text() + "` is nothing that can be expected",
          NearestWord.to(name.text(), names)
              .map(nearest -> "did you mean `" + nearest + "`?")
              .or(
                  () ->
                      Optional.of(
                          "a derived field, a calculation, `first` and a ranking, a decision that"
                              + " gives a list, or: "
                              + String.join(", ", ExpectWord.words()))));
    }
    return subject;
  }

  /** What the cell expects, or nothing when it is faulty, which is reported. */
  Optional<Expected> values(Subject subject, Text cell) {
    List<String> values = new ArrayList<>();
    boolean sound = true;
    for (String part : parts(subject, cell.text())) {
      Optional<String> value = value(subject, part, cell);
      value.ifPresent(values::add);
      sound &= value.isPresent();
    }
    return sound ? Optional.of(new Expected(subject.about(), values, cell.at())) : Optional.empty();
  }

  private static List<String> parts(Subject subject, String text) {
    boolean whole =
        subject.kind() == Kind.ONE_WORD
            || subject.kind() == Kind.FREE_TEXT
            || subject.words().stream().anyMatch(word -> Names.key(word).equals(Names.key(text)));
    return whole
        ? List.of(text.strip())
        : Arrays.stream(text.split("[,;]|(?i)\\s+or\\s+"))
            .map(String::strip)
            .filter(part -> !part.isEmpty())
            .toList();
  }

  private Optional<String> value(Subject subject, String text, Text cell) {
    return switch (subject.kind()) {
      case FREE_TEXT -> Optional.of(text);
      case ROWS -> row(text, cell);
      case NUMBERS -> number(subject, text, cell);
      case WORDS, ONE_WORD -> word(subject, text, cell);
    };
  }

  /** A row may have been taken away since; its case then fails, and the rest is still checked. */
  private Optional<String> row(String text, Text cell) {
    Optional<String> row = results.row(text).map(WrittenResults.RowOf::id);
    if (row.isEmpty()) {
      String nearest =
          NearestWord.to(text, results.ids())
              .map(near -> "; did you mean `" + near + "`?")
              .orElse("");
      issues.warning(
          "W222",
          cell.at(),
          "`" + text + "` is not the id of a row",
          "the case fails as long as it is expected" + nearest);
    }
    return row.or(() -> Optional.of(text));
  }

  private Optional<String> number(Subject subject, String text, Text cell) {
    if (Names.key(text).equals(NOTHING)) {
      return Optional.of(NOTHING);
    }
    try {
      return Optional.of(Value.of(new BigDecimal(text)).plain());
    } catch (NumberFormatException notANumber) {
      issues.error(
          "W222",
          cell.at(),
          "`" + text + "` is not a number, which `" + subject.about() + "` is",
          "write the number without its unit, or nothing");
      return Optional.empty();
    }
  }

  private Optional<String> word(Subject subject, String text, Text cell) {
    Optional<String> known =
        NameIndex.of(subject.words(), word -> word)
            .find(text)
            .or(() -> subject.words().contains("yes") ? yesNo(text) : Optional.empty());
    if (known.isEmpty()) {
      issues.error(
          "W222",
          cell.at(),
          "`" + text + "` cannot be expected of `" + subject.about() + "`",
          NearestWord.help(text, subject.words()));
    }
    return known;
  }

  private static Optional<String> yesNo(String text) {
    return switch (Names.key(text)) {
      case "true" -> Optional.of("yes");
      case "false" -> Optional.of("no");
      default -> Optional.empty();
    };
  }
}
