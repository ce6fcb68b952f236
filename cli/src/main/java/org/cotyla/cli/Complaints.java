package org.cotyla.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.cotyla.cli.text.Printable;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import picocli.CommandLine;

/** Says what went wrong in plain lines, never as a stack trace, and gives the exit code for it. */
final class Complaints {

  private final PrintWriter err;

  Complaints(PrintWriter err) {
    this.err = err;
  }

  /** Whatever a command threw. */
  int about(Throwable thrown) {
    if (thrown instanceof RejectedException rejected) {
      return rejected(rejected.issues());
    }
    if (thrown instanceof FileProblem problem) {
      line("error: " + problem.getMessage());
      return Main.WRONG_USAGE;
    }
    return unexpected(thrown);
  }

  int wrongUsage(String message, CommandLine command) {
    line("error: " + message);
    line("      help: " + command.getCommandSpec().qualifiedName() + " --help");
    return Main.WRONG_USAGE;
  }

  int answerCutOff() {
    line("error: the answer could not be written whole to standard output");
    return Main.FAULTS;
  }

  int unexpected(Throwable thrown) {
    line(
        "error: something unexpected went wrong, please report it with this line: "
            + thrown.getClass().getName()
            + Optional.ofNullable(thrown.getMessage()).map(text -> ": " + text).orElse(""));
    return Main.FAULTS;
  }

  private int rejected(List<Issue> issues) {
    list(issues);
    line(count(issues) + "; nothing was done");
    return Main.FAULTS;
  }

  /** Every issue with its place and advice. */
  void list(List<Issue> issues) {
    for (Issue issue : issues) {
      line(
          issue.severity().word()
              + " "
              + issue.code()
              + " "
              + issue.place().plain()
              + ": "
              + issue.message());
      issue.help().ifPresent(help -> line("      help: " + help));
    }
  }

  static String count(List<Issue> issues) {
    long errors = issues.stream().filter(i -> i.severity() == Severity.ERROR).count();
    long others = issues.size() - errors;
    String rest = others == 0 ? "" : ", " + others + (others == 1 ? " remark" : " remarks");
    return errors + (errors == 1 ? " error" : " errors") + rest;
  }

  /** One line, whatever the author of a file wrote into it. */
  private void line(String text) {
    err.print(Printable.line(text));
    err.print('\n');
  }
}
