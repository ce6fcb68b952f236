package org.cotyla.compare;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cotyla.compare.ReachedSteps.Reached;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Evaluation;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.RankingResult;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Symbol;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Step;
import org.cotyla.protocol.Vote;

/**
 * One case under two protocols. Each step that says the same in both and reads the same comes to
 * the same, so the new protocol takes it over from the old; only where something differs are both
 * worked out. Not thread-safe; it must be closed.
 */
final class PairedCase implements AutoCloseable {

  /** What two steps that may differ came to. */
  record Both<T>(T was, T is) {}

  private record Voice(Standing standing, Optional<Vote> vote) {}

  private final PairedProtocols protocols;
  private final Evaluation old;
  private final Evaluation young;
  private final BitSet other = new BitSet();
  private final Set<DecisionTable> otherVotes = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<Both<DecisionResult>> decisions = new ArrayList<>();
  private final List<Both<RankingResult>> rankings = new ArrayList<>();

  PairedCase(PairedProtocols protocols, Evaluation old, Evaluation young) {
    this.protocols = protocols;
    this.old = old;
    this.young = young;
    protocols.readings().unlike().forEach(this::noteIfOther);
    for (Reached reached : protocols.reached().steps()) {
      workOut(reached);
    }
  }

  /** The decisions on the first page that may differ, in order of need. */
  List<Both<DecisionResult>> decisions() {
    return decisions;
  }

  /** The rankings that may differ, in order of need. */
  List<Both<RankingResult>> rankings() {
    return rankings;
  }

  private void workOut(Reached reached) {
    Step step = reached.step();
    if (step instanceof Ranking ranking) {
      if (!reached.alike() || ranking.voters().stream().anyMatch(otherVotes::contains)) {
        rank(ranking);
      }
      return;
    }
    boolean other = reached.needs().stream().anyMatch(this::isOther);
    if (other || (!reached.alike() && !comesToTheSame(reached))) {
      reached.needs().forEach(this::lend);
      if (step instanceof DecisionTable table) {
        decide(table);
      } else if (step instanceof Calculation calculation) {
        noteIfOther(calculation.symbol());
      }
    }
  }

  private boolean comesToTheSame(Reached reached) {
    return reached.changed().filter(rows -> rows.comeToTheSame(old, young, this::lend)).isPresent();
  }

  private boolean isOther(Symbol symbol) {
    return other.get(symbol.index());
  }

  /** What is the same need not be worked out twice. */
  private void lend(Symbol symbol) {
    if (!isOther(symbol)) {
      protocols.oldName(symbol).ifPresent(was -> young.take(symbol, old.valueOf(was)));
    }
  }

  private void noteIfOther(Symbol symbol) {
    boolean same =
        protocols
            .oldName(symbol)
            .filter(was -> old.valueOf(was).equals(young.valueOf(symbol)))
            .isPresent();
    other.set(symbol.index(), !same);
  }

  private void decide(DecisionTable table) {
    DecisionResult is = young.decision(table);
    table.gives().forEach(this::noteIfOther);
    Optional<DecisionResult> was = protocols.counterparts().of(table).map(old::decision);
    if (was.isEmpty()) {
      otherVotes.add(table);
      return;
    }
    if (table.votes() && !voices(was.get()).equals(voices(is))) {
      otherVotes.add(table);
    }
    if (ReachedSteps.isShown(table)) {
      decisions.add(new Both<>(was.get(), is));
    }
  }

  private static List<Voice> voices(DecisionResult result) {
    List<Voice> voices = new ArrayList<>();
    for (Firing firing : result.counting()) {
      voices.add(new Voice(firing.standing(), firing.row().vote()));
    }
    return voices;
  }

  private void rank(Ranking ranking) {
    for (DecisionTable voter : ranking.voters()) {
      if (!young.has(voter)) {
        protocols.counterparts().of(voter).ifPresent(was -> young.take(voter, old.decision(was)));
      }
    }
    RankingResult is = young.ranking(ranking);
    noteIfOther(ranking.first());
    protocols
        .counterparts()
        .of(ranking)
        .ifPresent(was -> rankings.add(new Both<>(old.ranking(was), is)));
  }

  @Override
  public void close() {
    old.close();
    young.close();
  }
}
