package org.cotyla.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;

/**
 * An option of a ranking, asked for by name; case, spaces and hyphens do not matter.
 *
 * @param ranking the ranking
 * @param option one of its options
 */
public record AskedOption(Ranking ranking, Option option) {

  /**
   * The option of that name.
   *
   * @throws RejectedException when there is none
   */
  public static AskedOption find(Protocol protocol, String name) {
    return find(protocol, name, Optional.empty());
  }

  /**
   * The option of that name in that ranking.
   *
   * @param ranking the ranking's name; any ranking when absent
   * @throws RejectedException listing every fault of both names
   */
  public static AskedOption find(Protocol protocol, String name, Optional<String> ranking) {
    Issues issues = new Issues();
    List<AskedOption> found = found(protocol, name, ranking, "option", issues);
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    return found.get(0);
  }

  /** The one option that is meant, or none and an issue. */
  static List<AskedOption> found(
      Protocol protocol, String name, Optional<String> ranking, String word, Issues issues) {
    List<Ranking> rankings = rankings(protocol, ranking, issues);
    List<AskedOption> found = new ArrayList<>();
    for (Ranking one : rankings) {
      NameIndex.of(one.options(), Option::name)
          .find(name)
          .ifPresent(option -> found.add(new AskedOption(one, option)));
    }
    if (found.isEmpty()) {
      List<String> names =
          rankings.stream().flatMap(one -> one.options().stream()).map(Option::name).toList();
      issues.error(
          "C042",
          new Place.Whole(word + " `" + name + "`"),
          "there is no such option",
          NearestWord.help(name, names));
    }
    return found;
  }

  /** The named ranking; all of them when none is named, or none of that name is known. */
  private static List<Ranking> rankings(Protocol protocol, Optional<String> name, Issues issues) {
    Optional<Ranking> named = name.flatMap(protocol::ranking);
    if (name.isPresent() && named.isEmpty()) {
      List<String> names = protocol.rankings().stream().map(Ranking::name).toList();
      issues.error(
          "C044",
          new Place.Whole("ranking `" + name.get() + "`"),
          "there is no such ranking",
          NearestWord.help(name.get(), names));
    }
    return named.map(List::of).orElse(protocol.rankings());
  }
}
