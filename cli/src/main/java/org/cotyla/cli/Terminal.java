package org.cotyla.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The surroundings of one run: its streams and what else it may look at.
 *
 * @param in standard input
 * @param out where answers go, as UTF-8
 * @param err where complaints go, as UTF-8
 * @param takesColour whether the answers go to a terminal that shows colour
 * @param showsProgress whether complaints go to a terminal, where a line can be written over
 * @param clock the day, for the protocol's review date alone
 * @param home the folder of the program, when it is known
 */
record Terminal(
    InputStream in,
    PrintWriter out,
    PrintWriter err,
    boolean takesColour,
    boolean showsProgress,
    Clock clock,
    Optional<Path> home) {

  /** The surroundings of this process; System.out would keep write errors to itself. */
  static Terminal ofProcess() {
    return new Terminal(
        System.in,
        writer(new FileOutputStream(FileDescriptor.out)),
        writer(System.err),
        isTerminal(System.console()) && allowsColour(),
        "terminal".equals(System.getProperty("cotyla.err")),
        Clock.systemDefaultZone(),
        Optional.ofNullable(System.getProperty("cotyla.home")).map(Path::of));
  }

  static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8));
  }

  /** NO_COLOR, when it is set to anything, asks programs for plain text. */
  private static boolean allowsColour() {
    String noColour = System.getenv("NO_COLOR");
    return (noColour == null || noColour.isEmpty()) && !"dumb".equals(System.getenv("TERM"));
  }

  /** From Java 22 on a console may be there without a terminal, and can be asked. */
  private static boolean isTerminal(@Nullable Console console) {
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderJava) {
      return true;
    }
  }
}
