package org.cotyla.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.function.UnaryOperator;
import org.cotyla.cli.AnkleCases;
import org.cotyla.cli.TextProtocol;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;

/** Reports by the invented protocol about ankles, with pictures of every kind. */
final class AnkleReport {

  static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  private AnkleReport() {}

  static Protocol protocol(UnaryOperator<String> change) {
    return TextProtocol.ankle(text -> change.apply(text + pictures()));
  }

  static String of(String name) {
    return of(protocol(UnaryOperator.identity()), AnkleCases.named(name));
  }

  static String of(Protocol protocol, Case given) {
    Engine engine = Engine.of(protocol);
    return new HtmlReport(engine).write(engine.evaluate(given), TODAY);
  }

  private static String pictures() {
    try (InputStream in = TextProtocol.class.getResourceAsStream("ankle-pictures.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
