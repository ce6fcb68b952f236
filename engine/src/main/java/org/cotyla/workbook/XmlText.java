package org.cotyla.workbook;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Decodes the XML parts of a workbook, which are in UTF-8 or UTF-16 and no other encoding (ECMA-376
 * part 2). Left to itself the JDK's XML reader prints a malformed byte on standard error.
 */
final class XmlText {

  private XmlText() {}

  /** The part's characters; reading on over a malformed byte is an exception. */
  static Reader of(byte[] part) {
    boolean marked = part.length >= 3 && part[0] == (byte) 0xEF && part[1] == (byte) 0xBB;
    int start = marked ? 3 : 0;
    return new InputStreamReader(
        new ByteArrayInputStream(part, start, part.length - start),
        charset(part)
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT));
  }

  private static Charset charset(byte[] part) {
    int first = part.length < 2 ? 0 : (part[0] & 0xFF) << 8 | (part[1] & 0xFF);
    return switch (first) {
      case 0xFEFF, 0xFFFE -> StandardCharsets.UTF_16;
      case 0x003C -> StandardCharsets.UTF_16BE;
      case 0x3C00 -> StandardCharsets.UTF_16LE;
      default -> StandardCharsets.UTF_8;
    };
  }
}
