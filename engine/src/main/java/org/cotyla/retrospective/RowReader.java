package org.cotyla.retrospective;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.audit.JudgedDecision;
import org.cotyla.finding.Case;
import org.cotyla.finding.FindingsReader;
import org.cotyla.finding.Given;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.privacy.Wording;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Reason;
import org.cotyla.value.ValueType;

/** Reads a row as a past case, or says everything that is wrong with it. Immutable. */
final class RowReader {

  private static final int LONGEST_QUOTED = 60;
  private final ColumnMapping mapping;
  private final Protocol protocol;
  private final LocalDate today;
  private final FindingsReader findings;

  /** By the name of the ranking. */
  private final Map<String, NameIndex<Option>> options = new LinkedHashMap<>();

  /** Days after today are refused: they cannot be those of past cases. */
  RowReader(ColumnMapping mapping, Protocol protocol, LocalDate today) {
    this.mapping = mapping;
    this.protocol = protocol;
    this.today = today;
    this.findings = new FindingsReader(protocol);
    protocol
        .rankings()
        .forEach(
            ranking -> options.put(ranking.name(), NameIndex.of(ranking.options(), Option::name)));
  }

  /** The case; nothing when the row has a fault, and then the faults have grown. */
  Optional<PastCase> read(RawRow row, List<SetAside> faults) {
    int before = faults.size();
    if (row.broken().isPresent()) {
      faults.add(new SetAside(row.number(), "", row.broken().get()));
    } else if (row.cells().size() != mapping.columns().size()) {
      faults.add(
          new SetAside(
              row.number(),
              "",
              "the row has "
                  + row.cells().size()
                  + " cells, but there are "
                  + mapping.columns().size()
                  + " headings"));
    } else {
      PastCase read = new Reading(row, faults).read();
      if (faults.size() == before) {
        return Optional.of(read);
      }
      addFaultyFindings(read, faults);
    }
    return Optional.empty();
  }

  /** A row that is set aside anyway is told everything at once. */
  private void addFaultyFindings(PastCase past, List<SetAside> faults) {
    try {
      findings.read(past.given());
    } catch (RejectedException refused) {
      faults.addAll(SetAside.of(past.row(), refused));
    }
  }

  /** One row on its way. */
  private final class Reading {
    private final RawRow row;
    private final List<SetAside> faults;
    private final List<Case.Finding> findings = new ArrayList<>();
    private final Map<String, String> done = new LinkedHashMap<>();
    private boolean somethingDone;
    private String reference = "";
    private String role = JudgedDecision.NOT_RECORDED;
    private Optional<LocalDate> day = Optional.empty();
    private Optional<String> stage = Optional.empty();
    private Optional<String> reason = Optional.empty();
    private Place stagePlace = new Place.Whole("");

    Reading(RawRow row, List<SetAside> faults) {
      this.row = row;
      this.faults = faults;
    }

    PastCase read() {
      for (Column column : mapping.used()) {
        String text = row.cells().get(column.index()).strip();
        if (text.isEmpty()) {
          continue;
        }
        if (column.meaning() instanceof Meaning.Finding finding) {
          boolean number = finding.field().symbol().type() == ValueType.NUMBER;
          Given given = new Given.Written(text, number ? column.unit() : Optional.empty());
          findings.add(new Case.Finding(finding.field().name(), given, place(column)));
        } else if (column.meaning() instanceof Meaning.Done chosen) {
          somethingDone = true;
          done(column, chosen.ranking(), text);
        } else if (column.meaning() instanceof Meaning.Of about) {
          about(column, about, text);
        }
      }
      if (!somethingDone) {
        faults.add(new SetAside(row.number(), "", "nothing says what was done"));
      }
      String known = reference.isEmpty() ? "row " + row.number() : reference;
      Case given = new Case("", stage, findings, stagePlace);
      return new PastCase(row.number(), known, day, role, given, done, reason);
    }

    private void about(Column column, Meaning.Of about, String text) {
      switch (about) {
        case REFERENCE -> reference = Wording.isReference(text) ? text : "";
        case DATE -> date(column, text);
        case ROLE -> role(column, text);
        case STAGE -> {
          stage = Optional.of(text);
          stagePlace = place(column);
        }
        case REASON -> reason = reason(text);
      }
    }

    private void date(Column column, String text) {
      try {
        LocalDate read = LocalDate.parse(text);
        day = Optional.of(read);
        if (read.isAfter(today)) {
          fault(column, "the day `" + read + "` is yet to come");
        }
      } catch (DateTimeException notDate) {
        fault(column, "`" + cut(text) + "` is not a date: write it as 2025-03-31");
      }
    }

    private void role(Column column, String text) {
      if (Wording.isRole(text)) {
        role = text;
      } else {
        fault(
            column,
            "this is not a role: write what somebody is, never who, in letters, spaces and"
                + " hyphens");
      }
    }

    private void done(Column column, Ranking ranking, String text) {
      if (text.equalsIgnoreCase(PastCase.NOT_LISTED)) {
        done.put(ranking.name(), PastCase.NOT_LISTED);
        return;
      }
      Optional<Option> option =
          Optional.ofNullable(options.get(ranking.name())).flatMap(index -> index.find(text));
      if (option.isPresent()) {
        done.put(ranking.name(), option.get().name());
      } else {
        List<String> names = ranking.options().stream().map(Option::name).toList();
        fault(
            column,
            "`"
                + cut(text)
                + "` is not an option of `"
                + ranking.name()
                + "`: "
                + NearestWord.help(cut(text), names)
                + "; or write `"
                + PastCase.NOT_LISTED
                + "`");
      }
    }

    private Place place(Column column) {
      return new Place.Whole(column.heading());
    }

    private void fault(Column column, String why) {
      faults.add(new SetAside(row.number(), column.heading(), why));
    }
  }

  /** Only the words of the protocol's list are taken: free words may name somebody. */
  private Optional<String> reason(String text) {
    return Optional.of(protocol.reason(text).map(Reason::name).orElse("not on the list"));
  }

  private static String cut(String text) {
    return text.length() <= LONGEST_QUOTED ? text : text.substring(0, LONGEST_QUOTED) + "...";
  }
}
