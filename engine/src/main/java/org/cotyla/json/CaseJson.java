package org.cotyla.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.cotyla.finding.Case;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;

/**
 * Reads cases from JSON, laid out as {@code case.schema.json} says. A case file is untrusted input:
 * its size and depth are limited, and numbers are read as exact decimals.
 */
public final class CaseJson {

  /** The most bytes that a case file may have. */
  public static final int MOST_BYTES = 1 << 20;

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private CaseJson() {}

  /**
   * Reads a case from a stream, which stays open.
   *
   * @throws RejectedException listing every fault of the file
   * @throws IOException when the stream fails
   */
  public static Case read(InputStream json) throws IOException {
    return read(json.readNBytes(MOST_BYTES + 1));
  }

  /**
   * Reads a case from the bytes of a UTF-8 text.
   *
   * @throws RejectedException listing every fault of the file
   */
  public static Case read(byte[] json) {
    Issues issues = new Issues();
    if (json.length > MOST_BYTES) {
      issues.error(
          "C025",
          CaseFaults.WHOLE,
          "the file is larger than 1 MiB",
          "a case with every field stated needs some kilobytes");
      throw new RejectedException(issues.list());
    }
    try {
      return parse(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(json)).toString());
    } catch (CharacterCodingException otherEncoding) {
      issues.error(
          "C020",
          CaseFaults.WHOLE,
          "the file is not UTF-8 text",
          "save it as plain text with the encoding UTF-8");
      throw new RejectedException(issues.list());
    }
  }

  /**
   * Reads a case from its text.
   *
   * @throws RejectedException listing every fault of the text
   */
  public static Case read(String json) {
    return read(json.getBytes(StandardCharsets.UTF_8));
  }

  private static Case parse(String json) {
    String text = json.startsWith(BYTE_ORDER_MARK) ? json.substring(1) : json;
    return new CaseReader(text).read();
  }
}
