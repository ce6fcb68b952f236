package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.explore.Conditions;
import org.cotyla.explore.Margins;
import org.cotyla.explore.WhatMatters;

/** Writes for people what the answer hangs on: missing data and the lines near measured numbers. */
public final class WhatMattersAnswer {

  private final int width;
  private final Style style;

  public WhatMattersAnswer(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /**
   * The answer as text.
   *
   * @param today the day on which it is read, to say when the protocol is past its review
   */
  public String write(
      WhatMatters matters, Conditions conditions, Margins margins, LocalDate today) {
    Page page = new Page(width, style);
    new OpeningPart(page).write(matters.advice(), today, Optional.empty());
    new InfluencePart(page, conditions).write(matters);
    new MarginPart(page).write(margins);
    AroundClosing.write(page, matters.advice());
    return page.toString();
  }
}
