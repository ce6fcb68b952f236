package org.cotyla.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.Fault;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Severity;
import org.cotyla.protocol.About;

/**
 * The top and the end of the page: the caution, which case this is, and what forbids relying on it.
 */
final class OpeningSection {

  private final Sheet sheet;

  OpeningSection(Sheet sheet) {
    this.sheet = sheet;
  }

  static String title(Recommendation advice) {
    String title = advice.findings().title();
    return title.isBlank() ? "Untitled case" : title;
  }

  void write(LocalDate today) {
    Markup markup = sheet.markup();
    Recommendation advice = sheet.advice();
    About about = advice.protocol().about();
    markup.start("header");
    markup.leaf("p", advice.caution(), "class", "caution");
    markup.leaf("h1", title(advice));
    markup.start("p", "class", "meta");
    markup.text(
        about.title() + ", version " + about.version() + " (" + about.status().word() + ")");
    markup.text(" · stage: " + advice.findings().stage());
    markup.text(" · " + stated(advice.findings().data()));
    markup.text(" · written on " + today);
    markup.end();
    List<String> warnings = warnings(about, today);
    advice.protocol().remarks().stream()
        .filter(issue -> issue.severity() == Severity.WARNING)
        .forEach(issue -> warnings.add(remark(issue)));
    advice.remarks().forEach(issue -> warnings.add(remark(issue)));
    list("Before you read on", warnings);
    List<String> faults = new ArrayList<>();
    for (Fault fault : advice.faults()) {
      faults.add(fault.decision() + ": " + fault.message() + " (" + fault.code() + ")");
    }
    if (!faults.isEmpty()) {
      faults.add("Do not rely on what hangs on these decisions; tell the keeper of the protocol.");
    }
    list("The protocol contradicts itself on this case", faults);
    markup.end();
  }

  private static String stated(List<Datum> data) {
    List<Datum> asked =
        data.stream().filter(datum -> datum.knowledge() != Knowledge.NOT_YET).toList();
    long stated = asked.stream().filter(datum -> datum.knowledge() != Knowledge.MISSING).count();
    return stated + " of " + asked.size() + " findings stated";
  }

  private static List<String> warnings(About about, LocalDate today) {
    List<String> warnings = new ArrayList<>();
    switch (about.status()) {
      case DRAFT -> warnings.add("This protocol is a draft; it is not in force.");
      case SUPERSEDED -> warnings.add("This protocol is superseded by a newer version.");
      case WITHDRAWN -> warnings.add("This protocol is withdrawn; do not use it.");
      case IN_FORCE -> {}
    }
    about
        .effectiveFrom()
        .filter(from -> from.isAfter(today))
        .ifPresent(
            from -> warnings.add("This protocol is meant to be in force from " + from + "."));
    about
        .reviewDue()
        .filter(due -> due.isBefore(today))
        .ifPresent(due -> warnings.add("This protocol was due for review on " + due + "."));
    return warnings;
  }

  private static String remark(Issue issue) {
    return issue.place().plain()
        + ": "
        + issue.message()
        + issue.help().map(help -> "; " + help).orElse("");
  }

  private void list(String heading, List<String> lines) {
    if (lines.isEmpty()) {
      return;
    }
    Markup markup = sheet.markup();
    markup.start("div", "class", "warning");
    markup.start("p").leaf("strong", heading + ". ");
    if (lines.size() == 1) {
      markup.text(lines.get(0)).end();
    } else {
      markup.end();
      markup.start("ul");
      lines.forEach(line -> markup.leaf("li", line));
      markup.end();
    }
    markup.end();
  }

  void closing(LocalDate today) {
    Markup markup = sheet.markup();
    Recommendation advice = sheet.advice();
    markup.start("footer");
    markup.leaf("p", advice.caution(), "class", "caution");
    markup.leaf(
        "p",
        "Protocol "
            + advice.protocol().about().identifier()
            + " "
            + advice.protocol().about().version()
            + ", "
            + Words.digestInShort(advice.protocolDigest())
            + " · written on "
            + today,
        "class",
        "meta");
    markup.end();
  }
}
