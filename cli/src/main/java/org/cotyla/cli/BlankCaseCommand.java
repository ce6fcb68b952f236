package org.cotyla.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.cotyla.caseform.CaseForm;
import org.cotyla.json.BlankCaseJson;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a case file to fill in. */
@Command(
    name = "blank-case",
    description = {
      "Writes a case file to fill in: every field that the protocol asks for, with its unit, its"
          + " allowed values and its meaning."
    },
    footer = {
      "",
      "The file is a case as it stands, in which nothing is recorded yet. As xlsx it is a form for a"
          + " spreadsheet program; every command that takes a case takes it filled in."
    })
final class BlankCaseCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Mixin private CommonOptions common = new CommonOptions();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Write to this file; standard output when absent.")
  private @Nullable Path output;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "json or xlsx; xlsx is a form to fill in. Usually json.")
  private Format format = Format.JSON;

  /** What is written. */
  enum Format {
    JSON,
    XLSX;

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  BlankCaseCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Protocol fields = common.readProtocol(terminal.home());
    if (format == Format.XLSX) {
      form(fields);
    } else if (output == null) {
      terminal.out().print(BlankCaseJson.write(fields));
    } else {
      OutputFile.write(output, BlankCaseJson.write(fields));
    }
    return Main.DONE;
  }

  private void form(Protocol fields) throws IOException {
    if (output == null) {
      throw new ParameterException(
          spec.commandLine(), "--format xlsx needs --output FILE: a form is no text");
    }
    ByteArrayOutputStream form = new ByteArrayOutputStream();
    CaseForm.write(fields, form);
    OutputFile.write(output, form.toByteArray());
  }
}
