package org.cotyla.workbook;

import java.util.List;
import java.util.Optional;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;

/** Refuses a file as a whole: one message, before anything of it is used. */
record Refusal(String file) {

  Refusal {
    file = TidyText.of(file);
  }

  RejectedException because(String code, String message) {
    return at(new Place.Whole(file), code, message, Optional.empty());
  }

  RejectedException because(String code, String message, String help) {
    return at(new Place.Whole(file), code, message, Optional.of(help));
  }

  RejectedException damaged(String what) {
    return because(
        "W009",
        "the file is damaged or cut short: " + what,
        "fetch it again from where it came, or open and save it in a spreadsheet program");
  }

  static RejectedException at(Place place, String code, String message, Optional<String> help) {
    return new RejectedException(List.of(new Issue(code, Severity.ERROR, place, message, help)));
  }
}
