package org.cotyla.identity;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of this engine, as it was built. */
public final class EngineVersion {

  private EngineVersion() {}

  public static String current() {
    return Loaded.VERSION;
  }

  /** Reads the version once, when it is first asked for. */
  private static final class Loaded {
    static final String VERSION = read();

    private static String read() {
      Properties properties = new Properties();
      try (InputStream stream = EngineVersion.class.getResourceAsStream("engine.properties")) {
        properties.load(stream);
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
      return properties.getProperty("version", "unknown");
    }
  }
}
