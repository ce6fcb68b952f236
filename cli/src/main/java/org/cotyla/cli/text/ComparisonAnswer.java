package org.cotyla.cli.text;

import java.util.List;
import java.util.Optional;
import org.cotyla.compare.Impact;
import org.cotyla.compare.ProtocolComparison;
import org.cotyla.issue.Issue;
import org.cotyla.protocol.About;

/** Writes for people what differs in meaning between two versions of a protocol. */
public final class ComparisonAnswer {

  private final int width;
  private final Style style;

  public ComparisonAnswer(int width, Style style) {
    this.width = width;
    this.style = style;
  }

  /**
   * The answer as text.
   *
   * @param impact what changes for past cases, when there are any
   * @param library what the past cases are called
   * @param remarks what is to be said of how they were read
   */
  public String write(
      ProtocolComparison comparison, Optional<Impact> impact, String library, List<Issue> remarks) {
    Page page = new Page(width, style);
    opening(page, comparison);
    new ComparisonSummary(page).write(comparison, impact);
    new EditPart(page).write(comparison);
    new DifferencePart(page).write(comparison);
    new FollowingPart(page).write(comparison);
    impact.ifPresent(
        found -> new ImpactPart(page).write(found, library, remarks, comparison.meaning()));
    closing(page, comparison);
    return page.toString();
  }

  private static void opening(Page page, ProtocolComparison comparison) {
    page.paragraph(0, comparison.after().about().caution());
    page.blank();
    page.hanging("Old  ", named(comparison.before().about()));
    page.hanging("New  ", named(comparison.after().about()));
  }

  private static String named(About about) {
    return about.title() + ", version " + about.version() + " (" + about.status().word() + ")";
  }

  private static void closing(Page page, ProtocolComparison comparison) {
    page.blank();
    page.paragraph(
        0,
        "Protocol old "
            + Words.digestInShort(comparison.digestBefore())
            + ", new "
            + Words.digestInShort(comparison.digestAfter())
            + ". 'Proven' is over every complete case that both protocols take.");
  }
}
