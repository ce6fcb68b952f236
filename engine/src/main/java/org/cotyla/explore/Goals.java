package org.cotyla.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.ShownAs;
import org.cotyla.value.Value;

/** The goals of a protocol by the names that people give them. */
public final class Goals {

  private Goals() {}

  /**
   * The goals that the words can mean: an option, a value of a choice or a yes/no that a decision
   * of the first page gives, or {@code name=value}. Bare words that name an option mean that it
   * comes first, although a decision may give its name too.
   */
  public static List<Goal> named(Protocol protocol, String words) {
    int sign = words.indexOf('=');
    String about = sign < 0 ? "" : Names.key(words.substring(0, sign));
    String wanted = Names.key(words.substring(sign + 1));
    List<Goal> meant =
        all(protocol)
            .filter(goal -> Names.key(goal.wanted()).equals(wanted))
            .filter(goal -> sign < 0 || Names.key(goal.about()).equals(about))
            .toList();
    List<Goal> options = meant.stream().filter(Goal.First.class::isInstance).toList();
    return options.isEmpty() ? meant : options;
  }

  /**
   * The one goal that the words mean.
   *
   * @throws RejectedException when they mean none or several
   */
  public static Goal one(Protocol protocol, String words) {
    List<Goal> meant = named(protocol, words);
    if (meant.size() == 1) {
      return meant.get(0);
    }
    Issues issues = new Issues();
    Place place = new Place.Whole(protocol.about().identifier());
    if (meant.isEmpty()) {
      List<String> names = all(protocol).map(Goal::wanted).distinct().toList();
      issues.error(
          "C055",
          place,
          "`" + words + "` is no option and no value of a decision of the first page",
          NearestWord.to(words, names).map(nearest -> "did you mean `" + nearest + "`?"));
    } else {
      List<String> names =
          meant.stream().map(goal -> "`" + goal.about() + "=" + goal.wanted() + "`").toList();
      issues.error(
          "C056",
          place,
          "`" + words + "` can mean several things",
          "write " + String.join(" or ", names));
    }
    throw new RejectedException(issues.list());
  }

  /** Every goal, options first. */
  public static Stream<Goal> all(Protocol protocol) {
    List<Goal> goals = new ArrayList<>();
    for (Ranking ranking : protocol.rankings()) {
      for (Option option : ranking.options()) {
        goals.add(new Goal.First(ranking, option.name()));
      }
    }
    for (DecisionTable table : protocol.decisions()) {
      if (table.shownAs() == ShownAs.HEADLINE && table.hitPolicy().isSingleHit()) {
        table
            .outputs()
            .forEach(
                output ->
                    values(protocol, output.symbol())
                        .forEach(
                            value -> goals.add(new Goal.Comes(table, output.symbol(), value))));
      }
    }
    return goals.stream();
  }

  private static Stream<Value> values(Protocol protocol, Symbol output) {
    return protocol.fields().stream()
        .filter(field -> field.symbol().equals(output) && field.allowed().isFinite())
        .map(field -> field.allowed().values())
        .findFirst()
        .map(List::stream)
        .orElse(Optional.<Value>empty().stream());
  }
}
