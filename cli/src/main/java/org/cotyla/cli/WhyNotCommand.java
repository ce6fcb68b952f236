package org.cotyla.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.WhyNotAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.AskedOption;
import org.cotyla.explain.WhyNot;
import org.cotyla.json.WhyNotJson;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Explains why an option does not stand before another. */
@Command(
    name = "why-not",
    description = {
      "Says why an option does not come first on a case, or before another option: the rows that"
          + " separate the two in order of weight; and of an option that is ruled out, the rows"
          + " that do so and which single finding would lift each."
    },
    footer = {
      "",
      "Marks: + for the option asked about or against the other, - the reverse, x ruled out,"
          + " ? open, ! warning.",
      "Exit code 1 also when the protocol contradicts itself on the case; the answer then says"
          + " where."
    })
final class WhyNotCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private OptionArguments asked = new OptionArguments();

  @Option(
      names = "--against",
      paramLabel = "OTHER",
      description = "The option to hold it against; the one that comes first when absent.")
  private @Nullable String against;

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  WhyNotCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    Faults faults = new Faults();
    Optional<Recommendation> advice = faults.of(() -> engine.evaluate(asked.readCase(terminal)));
    Optional<AskedOption> option = faults.of(() -> asked.find(engine.protocol()));
    Optional<AskedOption> other =
        Optional.ofNullable(against).flatMap(name -> faults.of(() -> other(engine, option, name)));
    faults.refuseIfAny();
    WhyNot whyNot = WhyNot.of(engine, advice.orElseThrow(), option.orElseThrow(), other);
    terminal.out().print(answer.asJson() ? WhyNotJson.write(whyNot) : text(whyNot));
    return whyNot.recommendation().faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }

  private AskedOption other(Engine engine, Optional<AskedOption> option, String name) {
    return AskedOption.find(engine.protocol(), name, option.flatMap(one -> asked.rankingOf(one)));
  }

  private String text(WhyNot whyNot) {
    return new WhyNotAnswer(answer.width(), answer.style(terminal))
        .write(whyNot, LocalDate.now(terminal.clock()));
  }
}
