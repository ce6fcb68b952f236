package org.cotyla.ledger;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/** Documents are stored deflated (RFC 1951, without a header). */
final class Deflate {

  /** The most bytes that a document may have; more is not unpacked. */
  static final int MOST_BYTES = 64 << 20;

  private Deflate() {}

  static byte[] pack(byte[] plain) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
    try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
      out.write(plain);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    } finally {
      deflater.end();
    }
    return packed.toByteArray();
  }

  /** The plain bytes, or what can be had of them; their digest tells whether that is all. */
  static byte[] unpack(byte[] packed) {
    Inflater inflater = new Inflater(true);
    try (InflaterInputStream in =
        new InflaterInputStream(new ByteArrayInputStream(packed), inflater)) {
      return in.readNBytes(MOST_BYTES);
    } catch (IOException damaged) {
      return new byte[0];
    } finally {
      inflater.end();
    }
  }
}
