package org.cotyla.ledger;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.PropertyAccessor;
import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.cotyla.identity.CanonicalJson;

/** The text of an entry, over which its digest is taken: canonical JSON, written and read back. */
final class EntryBody {

  private static final int LONGEST_TEXT = 16 << 20;

  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .addModule(new Jdk8Module())
          .addModule(new JavaTimeModule())
          .serializationInclusion(JsonInclude.Include.NON_ABSENT)
          .visibility(PropertyAccessor.ALL, Visibility.NONE)
          .visibility(PropertyAccessor.FIELD, Visibility.ANY)
          .visibility(PropertyAccessor.CREATOR, Visibility.ANY)
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .enable(SerializationFeature.WRITE_ENUMS_USING_TO_STRING)
          .enable(DeserializationFeature.READ_ENUMS_USING_TO_STRING)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  static {
    MAPPER
        .getFactory()
        .setStreamReadConstraints(
            StreamReadConstraints.builder().maxStringLength(LONGEST_TEXT).build());
  }

  private EntryBody() {}

  /** An entry as it is to be written. */
  static Entry write(long sequence, Instant time, String previous, Content content) {
    ObjectNode json = MAPPER.createObjectNode();
    json.put("kind", content.kind().word());
    json.put("sequence", sequence);
    json.put("time", time.toString());
    json.put("previous", previous);
    json.set("content", MAPPER.valueToTree(content));
    String body = CanonicalJson.of(json.toString());
    return new Entry(sequence, time, content, previous, digest(body), body);
  }

  /** A flat object of texts in canonical form. */
  static String canonical(Map<String, String> parts) {
    return CanonicalJson.of(MAPPER.valueToTree(parts).toString());
  }

  /** A flat object of texts for people: indented, with a line end at its end. */
  static String indented(Map<String, String> parts) {
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(parts) + "\n";
    } catch (JacksonException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The texts of a flat object; nothing when it is not one. */
  static Optional<Map<String, String>> parts(String json) {
    try {
      return Optional.ofNullable(
          MAPPER.readValue(json, new TypeReference<Map<String, String>>() {}));
    } catch (JacksonException malformed) {
      return Optional.empty();
    }
  }

  static String digest(String body) {
    return CanonicalJson.digest(body.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * An entry read back.
   *
   * @param row the number of the row, for what is said when it cannot be read
   * @throws UnreadableEntryException when the text is not that of an entry
   */
  static Entry read(long row, String body, String digest) {
    try {
      JsonNode json = MAPPER.readTree(body);
      if (!json.path("content").isObject()) {
        throw new UnreadableEntryException(row, "it has no content");
      }
      Kind kind =
          Kind.of(json.path("kind").asText())
              .orElseThrow(() -> new UnreadableEntryException(row, "its kind is not known"));
      Entry entry =
          write(
              json.path("sequence").longValue(),
              Instant.parse(json.path("time").asText()),
              json.path("previous").asText(),
              MAPPER.treeToValue(json.path("content"), type(kind)));
      if (!entry.body().equals(body)) {
        throw new UnreadableEntryException(row, "it is not written as this ledger writes entries");
      }
      return new Entry(
          entry.sequence(), entry.time(), entry.content(), entry.previous(), digest, body);
    } catch (JacksonException | DateTimeException | IllegalArgumentException malformed) {
      throw new UnreadableEntryException(row, "it is not sound JSON of an entry");
    }
  }

  private static Class<? extends Content> type(Kind kind) {
    return switch (kind) {
      case FOUNDING -> Content.Founding.class;
      case KEY -> Content.KeyVoucher.class;
      case KEY_WITHDRAWAL -> Content.KeyWithdrawal.class;
      case APPROVAL -> Content.Approval.class;
      case RELEASE -> Content.Release.class;
      case WITHDRAWAL -> Content.Withdrawal.class;
      case RECOMMENDATION -> Content.Recommendation.class;
      case DECISION -> Content.Decision.class;
      case OUTCOME -> Content.Outcome.class;
      case CHECKPOINT -> Content.Checkpoint.class;
    };
  }
}
