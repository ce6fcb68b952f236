package org.cotyla.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.cotyla.explain.AskedOption;
import org.cotyla.finding.Case;
import org.cotyla.protocol.Protocol;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Names the case and the option that a question is about. */
final class OptionArguments {

  @Parameters(
      index = "0",
      paramLabel = "CASE",
      description = "The case, as JSON or as a form filled in; - reads standard input.")
  private Path caseFile = Path.of("-");

  @Parameters(
      index = "1",
      paramLabel = "OPTION",
      description = "The option by its name; capitals, spaces and hyphens do not matter.")
  private String option = "";

  @Option(
      names = "--ranking",
      paramLabel = "NAME",
      description = "The ranking, where an option stands in several.")
  private @Nullable String ranking;

  Case readCase(Terminal terminal) {
    return CaseFile.read(caseFile, terminal.in());
  }

  AskedOption find(Protocol protocol) {
    return AskedOption.find(protocol, option, Optional.ofNullable(ranking));
  }

  /** Where another option is looked for first: in the ranking that was named. */
  Optional<String> rankingOf(AskedOption found) {
    return Optional.ofNullable(ranking).map(named -> found.ranking().name());
  }
}
