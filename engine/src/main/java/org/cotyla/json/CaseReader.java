package org.cotyla.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.finding.Case;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NearestWord;
import org.jspecify.annotations.Nullable;

/** Reads one case; the keys are exact, so that the JSON Schema says the same. */
final class CaseReader {

  static final int DEEPEST = 20;

  private static final List<String> KEYS = List.of("title", "stage", "note", "findings");
  private static final int LONGEST_NAME = 200;
  private static final int MOST_KEYS = 2_000;

  /** Sizes are checked here, with the field's name; the library watches over the depth alone. */
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxNumberLength(2 * CaseJson.MOST_BYTES)
                  .maxNameLength(2 * CaseJson.MOST_BYTES)
                  .build())
          .build();

  private final String text;
  private final CaseFaults faults = new CaseFaults();
  private final List<Case.Finding> findings = new ArrayList<>();
  private @Nullable String title;
  private @Nullable String stage;

  CaseReader(String text) {
    this.text = text;
  }

  /**
   * The case.
   *
   * @throws RejectedException listing every fault
   */
  Case read() {
    try (JsonParser parser = JSON.createParser(text)) {
      readWhole(parser);
    } catch (StreamConstraintsException tooDeep) {
      faults.tooDeep(DEEPEST);
    } catch (JsonEOFException endsEarly) {
      JsonLocation end = endsEarly.getLocation();
      faults.notJson(
          "the text ends at line " + end.getLineNr() + " before the JSON does",
          "a closing }, ] or quotation mark is missing");
    } catch (JsonProcessingException malformed) {
      JsonLocation at = malformed.getLocation();
      faults.notJson(
          "this is not JSON at line " + at.getLineNr() + ", column " + at.getColumnNr(),
          "often a comma is missing or too many, or a name or a text lacks its quotation marks");
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    if (faults.issues().hasErrors()) {
      throw new RejectedException(faults.issues().list());
    }
    return new Case(title == null ? "" : title, Optional.ofNullable(stage), findings);
  }

  private void readWhole(JsonParser parser) throws IOException {
    JsonToken first = parser.nextToken();
    if (first == null) {
      faults.notACase("the file is empty");
      return;
    }
    if (first != JsonToken.START_OBJECT) {
      faults.notACase("the file holds " + CaseFaults.kind(first));
      parser.skipChildren();
    } else {
      readKeys(parser);
    }
    if (parser.nextToken() != null) {
      faults.notJson(
          "the text goes on at line "
              + parser.currentTokenLocation().getLineNr()
              + " after its end",
          "one file holds one case");
    }
  }

  private void readKeys(JsonParser parser) throws IOException {
    Set<String> seen = new HashSet<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      JsonToken value = parser.nextToken();
      if (isTooMany(seen) || !isNew(seen, key, CaseFaults.WHOLE)) {
        parser.skipChildren();
        continue;
      }
      switch (key) {
        case "title" -> title = text(parser, key);
        case "stage" -> stage = text(parser, key);
        case "note" -> text(parser, key);
        case "findings" -> readFindings(parser, value);
        default -> {
          faults.unknownKey(CaseFaults.WHOLE, key, KEYS, adviceFor(key));
          parser.skipChildren();
        }
      }
    }
    if (!seen.contains("findings")) {
      faults.notACase("there is no `findings`");
    }
  }

  private boolean isNew(Set<String> seen, String key, Place place) {
    boolean isNew = seen.add(key);
    if (!isNew) {
      faults.twice(place, key);
    }
    return isNew;
  }

  /** Beyond any case that is meant, names are no longer looked up: that would take too long. */
  private boolean isTooMany(Set<String> seen) {
    boolean tooMany = seen.size() >= MOST_KEYS;
    if (tooMany) {
      faults.tooLarge(
          CaseFaults.WHOLE, "there are more than " + MOST_KEYS + " keys", "a case has far fewer");
    }
    return tooMany;
  }

  /** A key that is near to none of the format is most likely a field outside of `findings`. */
  private static Optional<String> adviceFor(String key) {
    boolean near = NearestWord.to(key, KEYS).isPresent();
    return near
        ? Optional.empty()
        : Optional.of("if it is a field of the protocol, it stands inside `findings`");
  }

  private @Nullable String text(JsonParser parser, String key) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.VALUE_NULL) {
      return null;
    }
    if (token != JsonToken.VALUE_STRING) {
      faults.wrongKind(CaseFaults.WHOLE, "`" + key + "`", token, "expected a text");
      parser.skipChildren();
      return null;
    }
    return FindingReader.shortText(parser, CaseFaults.WHOLE, "`" + key + "`", faults);
  }

  private void readFindings(JsonParser parser, JsonToken value) throws IOException {
    if (value != JsonToken.START_OBJECT) {
      faults.wrongKind(
          CaseFaults.WHOLE,
          "`findings`",
          value,
          "expected an object with each field's name and value: {\"name of a field\": 12}");
      parser.skipChildren();
      return;
    }
    Set<String> seen = new HashSet<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String field = parser.currentName();
      parser.nextToken();
      Place place = new Place.InCase(CaseFaults.cut(field));
      if (isTooMany(seen) || !isNew(seen, field, place)) {
        parser.skipChildren();
      } else if (field.length() > LONGEST_NAME) {
        faults.tooLarge(
            place, "the name has " + field.length() + " characters", "at most " + LONGEST_NAME);
        parser.skipChildren();
      } else {
        new FindingReader(parser, place, faults)
            .read()
            .ifPresent(given -> findings.add(new Case.Finding(field, given)));
      }
    }
  }
}
