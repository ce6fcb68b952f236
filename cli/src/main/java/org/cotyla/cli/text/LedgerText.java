package org.cotyla.cli.text;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.cotyla.ledger.Choice;
import org.cotyla.ledger.Content;
import org.cotyla.ledger.Entry;
import org.cotyla.ledger.Governance;
import org.cotyla.ledger.ProtocolVersion;
import org.cotyla.ledger.PublicKeyOf;
import org.cotyla.ledger.Registry;

/** What is said when something goes into a ledger, and what stands in it. */
public final class LedgerText {

  private static final int WIDTH = 80;

  private LedgerText() {}

  public static String approved(
      String title, ProtocolVersion version, Registry.Approving approving) {
    Page page = new Page(WIDTH, Style.PLAIN);
    page.hanging("Protocol  ", title);
    page.hanging("Digest    ", Words.digestInShort(version.digest()) + "...");
    page.hanging("Approval  ", "entry " + approving.approval().sequence());
    String from = approving.effectiveFrom().toString();
    String state =
        approving
            .release()
            .map(entry -> "by entry " + entry.sequence() + ", in force from " + from)
            .orElse("not yet: one more role must approve it, for " + from);
    page.hanging("Released  ", state);
    return page.toString();
  }

  public static String decided(Entry entry) {
    Content.Decision decision = (Content.Decision) entry.content();
    Page page = new Page(WIDTH, Style.PLAIN);
    page.paragraph(0, "Decision recorded as entry " + entry.sequence() + ".");
    for (Choice choice : decision.choices()) {
      String stood =
          choice.stood() == Choice.Stood.NOT_LISTED
              ? ""
              : " (" + choice.stood().word() + " in the recommendation)";
      page.hanging("  " + choice.ranking() + ": ", choice.option() + stood);
    }
    page.paragraph(
        0,
        decision.followed()
            ? "It follows the recommendation of entry " + decision.recommendation() + "."
            : "It departs from the recommendation of entry " + decision.recommendation() + ".");
    return page.toString();
  }

  /** The keys that count, and every release with its life on the day. */
  public static String state(Governance governance, LocalDate today) {
    Page page = new Page(WIDTH, Style.PLAIN);
    page.hanging("Ledger  ", governance.ledger());
    page.heading("Keys that count");
    for (PublicKeyOf key : governance.keys()) {
      page.hanging("  " + key.role() + ": ", Words.digestInShort(key.name()) + "...");
    }
    page.heading("Protocols");
    if (governance.releases().isEmpty()) {
      page.paragraph(2, "None is released.");
    }
    for (Governance.Released release : governance.releases()) {
      page.hanging("  entry " + release.sequence() + ": ", line(governance, release, today));
    }
    List<Governance.Approved> waiting = governance.approvals();
    if (!waiting.isEmpty()) {
      page.paragraph(
          2,
          "Approved by one role so far: "
              + waiting.stream()
                  .map(
                      approved ->
                          approved.approval().protocol().identifier()
                              + " "
                              + approved.approval().protocol().version()
                              + " by "
                              + approved.approval().signature().role())
                  .collect(Collectors.joining("; ")));
    }
    return page.toString();
  }

  private static String line(Governance governance, Governance.Released release, LocalDate today) {
    ProtocolVersion protocol = release.protocol();
    boolean again = governance.lastRelease(protocol).filter(release::equals).isEmpty();
    return protocol.identifier()
        + " "
        + protocol.version()
        + ", from "
        + protocol.effectiveFrom().map(LocalDate::toString).orElse("-")
        + ": "
        + (again ? "released again later" : governance.life(protocol, today).word());
  }
}
