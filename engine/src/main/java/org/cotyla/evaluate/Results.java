package org.cotyla.evaluate;

import org.cotyla.expression.Scope;
import org.cotyla.protocol.DecisionTable;
import org.cotyla.protocol.Ranking;

/** What the names, decisions and rankings of one case come to. */
public interface Results extends Scope {

  /** What a decision of the protocol comes to. */
  DecisionResult decision(DecisionTable table);

  /** What a ranking of the protocol comes to. */
  RankingResult ranking(Ranking ranking);
}
