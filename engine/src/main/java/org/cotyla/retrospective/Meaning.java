package org.cotyla.retrospective;

import java.util.List;
import java.util.Locale;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Ranking;

/** What a column of past cases says. */
public sealed interface Meaning {

  /** The words by which a mapping file names it. */
  String word();

  /** A finding. */
  record Finding(Field field) implements Meaning {
    @Override
    public String word() {
      return "field: " + field.name();
    }
  }

  /** What was done, as an option of a ranking. */
  record Done(Ranking ranking) implements Meaning {
    @Override
    public String word() {
      return "done: " + ranking.name();
    }
  }

  /** Something about the case that is no finding. */
  enum Of implements Meaning {
    REFERENCE,
    DATE,
    ROLE,
    STAGE,
    REASON;

    @Override
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The headings by which it is known besides its own word. */
    List<String> headings() {
      return switch (this) {
        case REFERENCE -> List.of("reference", "case reference", "case");
        case DATE -> List.of("date", "day", "date of decision", "date of operation");
        case ROLE -> List.of("role", "role of decider", "decided by role");
        case STAGE -> List.of("stage");
        case REASON -> List.of("reason", "reason for departing", "reason for departure");
      };
    }
  }

  /** Nothing that is used; its cells are not looked at. */
  record Ignored(String why) implements Meaning {

    static final String WORD = "-";

    @Override
    public String word() {
      return WORD;
    }
  }
}
