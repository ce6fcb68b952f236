package org.cotyla.testcases.neighbours;

import java.util.List;
import java.util.Optional;
import org.cotyla.testcases.house.Draw;
import org.cotyla.testcases.house.OrdinaryCase;

/** A small step by which a finding of a case becomes worse. */
sealed interface Worsening {

  /** The case with the finding one step worse; nothing when it is at its worst already. */
  Optional<OrdinaryCase> of(OrdinaryCase before, Draw draw);

  String field();

  /** A number that becomes worse as it grows (or, with steps below 0, as it falls). */
  record Number(String field, int end, List<Integer> steps) implements Worsening {
    @Override
    public Optional<OrdinaryCase> of(OrdinaryCase before, Draw draw) {
      int now = before.number(field);
      int step = draw.oneOf(steps);
      int after = step > 0 ? Math.min(end, now + step) : Math.max(end, now + step);
      return after == now || (step > 0) != (after > now)
          ? Optional.empty()
          : Optional.of(before.with(field, after));
    }
  }

  /** A choice, or yes and no, from best to worst. */
  record Grade(String field, List<Object> fromBest) implements Worsening {
    @Override
    public Optional<OrdinaryCase> of(OrdinaryCase before, Draw draw) {
      int now = fromBest.indexOf(before.get(field));
      return now < 0 || now + 1 == fromBest.size()
          ? Optional.empty()
          : Optional.of(before.with(field, fromBest.get(now + 1)));
    }
  }

  /** The bone: what is lost, and what is left to hold a cup. */
  static List<Worsening> ofBone() {
    return List.of(
        new Number("hip centre migration", 60, List.of(1, 5, 15)),
        new Number("ischial lysis", 50, List.of(1, 5, 15)),
        new Number("rim loss", 9, List.of(1, 3)),
        new Number("host bone contact", 0, List.of(-1, -5, -15)),
        new Grade("teardrop lysis", List.of("none", "mild", "moderate", "severe", "obliterated")),
        new Grade("köhler line", List.of("intact", "reached", "broken")),
        new Grade("dome support", List.of("good", "partial", "absent")),
        new Grade("anterior column", List.of("intact", "thinned", "lost")),
        new Grade("posterior column", List.of("intact", "thinned", "lost")),
        new Grade("posterior wall", List.of("intact", "deficient")),
        new Grade("medial wall", List.of("intact", "thinned", "absent")),
        new Grade("defect contained", List.of(true, false)));
  }

  /** The hip's hold: what lets it dislocate. */
  static List<Worsening> ofStability() {
    return List.of(
        new Number("prior dislocations", 10, List.of(1, 3)),
        new Number("fused levels", 10, List.of(1, 3)),
        new Number("earlier revisions", 5, List.of(1, 2)),
        new Number("planned head diameter", 22, List.of(-4, -8)),
        new Grade("abductors", List.of("working", "weak", "absent")),
        new Grade("greater trochanter", List.of("united", "ununited")),
        new Grade("cognitive impairment", List.of(false, true)),
        new Grade("neuromuscular disease", List.of("none", "parkinson disease", "spasticity")));
  }
}
