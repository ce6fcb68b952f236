package org.cotyla.explore;

import java.util.ArrayList;
import java.util.List;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.value.ValueType;

/**
 * How close each recorded number stands to a line at which a first option, a decision of the first
 * page or a rule-out changes. Immutable.
 *
 * <p>Only what is settled is looked at: a part of the answer that hangs on open data may be
 * narrowed by another number, which says little; {@link WhatMatters} tells on what it hangs.
 *
 * @param advice the answer to the case
 * @param margins the numbers on which the answer hangs, in the order of the protocol
 */
public record Margins(Recommendation advice, List<Margin> margins) {

  public Margins {
    margins = List.copyOf(margins);
  }

  /** The lines around each recorded number, with all else as it is. */
  public static Margins of(Engine engine, Recommendation advice) {
    FieldClasses classes = new FieldClasses(engine.protocol());
    // Only one number is another at a time, so most decisions meet what they met before.
    Engine remembering = engine.remembering();
    List<Margin> margins = new ArrayList<>();
    for (Datum datum : advice.findings().data()) {
      boolean number = datum.field().symbol().type() == ValueType.NUMBER;
      if (number && datum.knowledge() == Knowledge.RECORDED) {
        new MarginSearch(remembering, advice, datum, classes).margin().ifPresent(margins::add);
      }
    }
    return new Margins(advice, margins);
  }
}
