package org.cotyla.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes JSON that people can read as well: indented, with a line end at its end. */
public final class TidyJson {

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private static final Separators SEPARATORS =
      Separators.createDefaultInstance()
          .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
          .withArrayEmptySeparator("")
          .withObjectEmptySeparator("");

  /** What writes the content. */
  public interface Content {
    void write(JsonGenerator json) throws IOException;
  }

  private TidyJson() {}

  public static String of(Content content) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter(SEPARATORS)
              .withObjectIndenter(INDENT)
              .withArrayIndenter(INDENT));
      content.write(json);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }
}
