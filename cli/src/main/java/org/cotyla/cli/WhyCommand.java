package org.cotyla.cli;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cotyla.cli.text.WhyAnswer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.explain.AskedOption;
import org.cotyla.explain.Why;
import org.cotyla.explore.Goal;
import org.cotyla.explore.SmallestChange;
import org.cotyla.json.WhyJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Explains how an option got its place. */
@Command(
    name = "why",
    description = {
      "Says how an option got its place on a case: each row that speaks for it, against it or rules"
          + " it out, with the values that met its tests, and what those go back to."
    },
    footer = {
      "",
      "Marks: + speaks for, - speaks against, x ruled out, ? open, ! warning.",
      "Exit code 1 also when the protocol contradicts itself on the case; the answer then says"
          + " where."
    })
final class WhyCommand implements Callable<Integer> {

  private static final int FINDINGS_AT_MOST = 2;

  private final Terminal terminal;

  @Mixin private OptionArguments asked = new OptionArguments();

  @Mixin private CommonOptions common = new CommonOptions();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  WhyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Engine engine = Engine.of(common.readProtocol(terminal.home()));
    Faults faults = new Faults();
    Optional<Recommendation> advice = faults.of(() -> engine.evaluate(asked.readCase(terminal)));
    Optional<AskedOption> option = faults.of(() -> asked.find(engine.protocol()));
    faults.refuseIfAny();
    Why why = Why.of(advice.orElseThrow(), option.orElseThrow());
    Optional<SmallestChange> change = toComeFirst(engine, why);
    terminal.out().print(answer.asJson() ? WhyJson.write(why, change) : text(why, change));
    return why.recommendation().faults().isEmpty() ? Main.DONE : Main.FAULTS;
  }

  private String text(Why why, Optional<SmallestChange> change) {
    return new WhyAnswer(answer.width(), answer.style(terminal))
        .write(why, change, LocalDate.now(terminal.clock()));
  }

  /** What would have to be true, where another option is or may be first. */
  private static Optional<SmallestChange> toComeFirst(Engine engine, Why why) {
    boolean isFirst = why.option().place() == 1 && why.ranking().firstIsCertain();
    return isFirst
        ? Optional.empty()
        : Optional.of(
            SmallestChange.of(
                engine,
                why.recommendation(),
                new Goal.First(why.ranking().ranking(), why.option().name()),
                FINDINGS_AT_MOST));
  }
}
