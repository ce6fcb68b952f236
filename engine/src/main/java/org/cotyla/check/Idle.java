package org.cotyla.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.expression.Symbol;
import org.cotyla.name.Names;
import org.cotyla.protocol.Calculation;
import org.cotyla.protocol.Demand;
import org.cotyla.protocol.Effect;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Ranking;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Safeguard;
import org.cotyla.protocol.Source;
import org.cotyla.protocol.Step;

/** Fields, calculations, options and sources that nothing uses. */
final class Idle {

  private final Protocol protocol;
  private final Remarks remarks;
  private final Set<Symbol> read = new HashSet<>();

  Idle(Protocol protocol, Remarks remarks) {
    this.protocol = protocol;
    this.remarks = remarks;
    for (Step step : protocol.steps()) {
      if (!(step instanceof Ranking)) {
        read.addAll(step.needs());
      }
    }
    for (Safeguard safeguard : protocol.checks().safeguards()) {
      for (Safeguard.Condition condition : safeguard.tests()) {
        read.add(condition.input().symbol());
        read.addAll(condition.test().prepared().references());
      }
      if (safeguard.demand() instanceof Demand.Holds holds) {
        read.add(holds.name());
        read.addAll(holds.test().prepared().references());
      }
    }
    protocol.pictures().stream()
        .flatMap(picture -> picture.parts().stream())
        .forEach(part -> drawn(part.shows()));
  }

  private void drawn(Picture.Shown shown) {
    if (shown instanceof Picture.Shown.Worked worked) {
      read.addAll(worked.expression().references());
    } else if (shown instanceof Picture.Shown.Finding finding) {
      read.add(finding.field().symbol());
    }
  }

  void check() {
    protocol.fields().forEach(this::field);
    protocol.calculations().forEach(this::calculation);
    protocol.rankings().forEach(this::options);
    sources();
  }

  private void field(Field field) {
    if (field.isGiven() && !read.contains(field.symbol())) {
      remarks.warning(
          "K151",
          field.at(),
          field.name(),
          "nothing reads the field `" + field.name() + "`, so asking for it is idle",
          "use it in a table or a calculation, or take it out");
    }
  }

  private void calculation(Calculation calculation) {
    if (!read.contains(calculation.symbol())) {
      remarks.note(
          "K152",
          calculation.at(),
          calculation.name(),
          "no table or formula reads the calculation `" + calculation.name() + "`");
    }
  }

  private void options(Ranking ranking) {
    List<Row> votes = ranking.voters().stream().flatMap(voter -> voter.rows().stream()).toList();
    for (Option option : ranking.options()) {
      boolean voted =
          votes.stream()
              .flatMap(row -> row.vote().stream())
              .anyMatch(
                  vote ->
                      Names.key(vote.option()).equals(Names.key(option.name()))
                          && vote.effect() == Effect.FAVOUR);
      if (!voted) {
        remarks.warning(
            "K153",
            option.at(),
            option.name(),
            "no row ever favours the option `" + option.name() + "`",
            "add the rows that speak for it, or take the option out");
      }
    }
  }

  private void sources() {
    Set<String> named = new HashSet<>();
    protocol.allRows().forEach(row -> named.addAll(row.sources()));
    protocol.fields().forEach(field -> named.addAll(field.sources()));
    protocol.calculations().forEach(calculation -> named.addAll(calculation.sources()));
    protocol.rankings().stream()
        .flatMap(ranking -> ranking.options().stream())
        .forEach(option -> named.addAll(option.sources()));
    protocol.checks().safeguards().forEach(safeguard -> named.addAll(safeguard.sources()));
    Stream<Source> idle =
        protocol.sources().stream().filter(source -> !named.contains(source.key()));
    idle.forEach(
        source ->
            remarks.note(
                "K154",
                source.at(),
                source.key(),
                "nothing leans on the source `" + source.key() + "`"));
  }
}
