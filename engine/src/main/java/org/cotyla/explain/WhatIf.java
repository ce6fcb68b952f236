package org.cotyla.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.finding.Findings;
import org.cotyla.finding.FindingsReader;
import org.cotyla.issue.Issues;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;

/**
 * A case run again with some findings supposed to be otherwise. Immutable.
 *
 * @param comparison the answer before and after, as far as they differ
 * @param changed the fields that were supposed otherwise, in the order of the protocol; also those
 *     of which the case says the same
 */
public record WhatIf(Comparison comparison, List<Field> changed) {

  public WhatIf {
    changed = List.copyOf(changed);
  }

  /**
   * Runs the protocol on the case as it is and as it is supposed to be.
   *
   * @throws RejectedException listing every fault of the case and of the suppositions
   */
  public static WhatIf of(Engine engine, Case given, List<Supposition> suppositions) {
    return new Run(engine.protocol()).of(engine, given, suppositions);
  }

  /** One comparison in the making. Used once. */
  private static final class Run {

    private final Protocol protocol;
    private final NameIndex<Field> fields;
    private final FindingsReader reader;
    private final Issues issues = new Issues();

    Run(Protocol protocol) {
      this.protocol = protocol;
      this.fields = NameIndex.of(protocol.fields(), Field::name);
      this.reader = new FindingsReader(protocol);
    }

    WhatIf of(Engine engine, Case given, List<Supposition> suppositions) {
      Optional<Findings> before = read(given);
      Map<Field, Supposition> known = known(suppositions);
      // With a faulty case, the suppositions alone are read, so that their faults show as well.
      Case base = before.isPresent() ? given : bare(given);
      Optional<Findings> after = read(supposed(base, known));
      if (issues.hasErrors() || before.isEmpty() || after.isEmpty()) {
        throw new RejectedException(issues.list());
      }
      Recommendation was = engine.evaluate(before.get());
      Recommendation is = engine.evaluate(after.get());
      List<Field> changed = protocol.fields().stream().filter(known::containsKey).toList();
      return new WhatIf(Comparison.of(was, is), changed);
    }

    private Optional<Findings> read(Case one) {
      try {
        return Optional.of(reader.read(one));
      } catch (RejectedException faulty) {
        issues.addAll(faulty.issues());
        return Optional.empty();
      }
    }

    private Map<Field, Supposition> known(List<Supposition> suppositions) {
      Map<Field, Supposition> known = new HashMap<>();
      for (Supposition one : suppositions) {
        Optional<Field> field = fields.find(one.field());
        if (field.isEmpty()) {
          issues.error("C001", one.place(), "this protocol has no such field", nearest(one));
        } else if (!field.get().isGiven()) {
          issues.error(
              "C003",
              one.place(),
              "the protocol decides this itself, so it cannot be supposed; suppose a finding that"
                  + " it is decided by");
        } else if (known.putIfAbsent(field.get(), one) != null) {
          issues.error("C046", one.place(), "this field is changed twice");
        }
      }
      return known;
    }

    /** The nearest name; else those that hold what was written as words of their own. */
    private Optional<String> nearest(Supposition one) {
      List<String> names = protocol.givenFields().stream().map(Field::name).toList();
      Optional<String> near = NearestWord.to(one.field(), names);
      List<String> holding =
          names.stream()
              .filter(name -> Names.key(name).contains(Names.key(one.field())))
              .limit(5)
              .toList();
      boolean tellsMore = Names.key(one.field()).length() > 2 && !holding.isEmpty();
      return tellsMore
          ? Optional.of("did you mean `" + String.join("`, or `", holding) + "`?")
          : near.map(word -> "did you mean `" + word + "`?");
    }

    private static Case bare(Case given) {
      return new Case(given.title(), Optional.empty(), List.of(), given.stagePlace());
    }

    private static Case supposed(Case given, Map<Field, Supposition> known) {
      Set<String> replaced =
          known.keySet().stream().map(field -> Names.key(field.name())).collect(Collectors.toSet());
      List<Case.Finding> findings = new ArrayList<>();
      given.findings().stream()
          .filter(finding -> !replaced.contains(Names.key(finding.field())))
          .forEach(findings::add);
      known.values().stream()
          .sorted(Comparator.comparing(Supposition::field))
          .forEach(
              one ->
                  one.given()
                      .ifPresent(
                          value ->
                              findings.add(new Case.Finding(one.field(), value, one.place()))));
      return new Case(given.title(), given.stage(), findings, given.stagePlace());
    }
  }
}
