package org.cotyla.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.cotyla.audit.AuditTable;
import org.cotyla.authoring.AuditWorkbook;
import org.cotyla.cli.text.AuditCsv;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** In which form figures are written, and where to. */
final class FiguresOptions extends TextOptions {

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description =
          "text, json, csv, html (one page, to print as well) or xlsx. Usually by the output file's"
              + " name, else text.")
  private @Nullable Format format;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output if absent, which takes no xlsx.")
  private @Nullable Path output;

  /** What is written. */
  enum Format {
    TEXT,
    JSON,
    CSV,
    HTML,
    XLSX;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** The forms of one report; only the one that is asked for is made. */
  record Forms(
      Supplier<String> text,
      Supplier<String> json,
      Supplier<String> page,
      Supplier<List<AuditTable>> tables) {}

  /** Refuses what cannot be written before any work is done for it. */
  void check() {
    if (chosen() == Format.XLSX && output == null) {
      refuse("--format xlsx needs --output FILE: a workbook is no text");
    }
    if (output != null && Files.exists(output, LinkOption.NOFOLLOW_LINKS)) {
      throw FileProblem.exists(output);
    }
  }

  void write(Terminal terminal, Forms forms) {
    if (output == null) {
      terminal.out().print(text(forms));
    } else if (chosen() == Format.XLSX) {
      OutputFile.write(output, AuditWorkbook.write(forms.tables().get()));
    } else {
      OutputFile.write(output, text(forms).getBytes(StandardCharsets.UTF_8));
    }
  }

  private String text(Forms forms) {
    return switch (chosen()) {
      case JSON -> forms.json().get();
      case CSV -> AuditCsv.write(forms.tables().get());
      case HTML -> forms.page().get();
      case TEXT, XLSX -> forms.text().get();
    };
  }

  private Format chosen() {
    if (format != null) {
      return format;
    }
    String name = output == null ? "" : output.toString().toLowerCase(Locale.ROOT);
    for (Format one : Format.values()) {
      if (name.endsWith("." + one)) {
        return one;
      }
    }
    return Format.TEXT;
  }
}
