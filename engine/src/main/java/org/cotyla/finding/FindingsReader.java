package org.cotyla.finding;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;
import org.cotyla.name.NameIndex;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.unit.UnitFactors;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/** Reads cases against a protocol's fields. Immutable. */
public final class FindingsReader {

  private static final int LONGEST_QUOTED = 60;

  private final List<Field> given;
  private final NameIndex<Field> fields;
  private final List<String> names;
  private final List<String> stages;
  private final UnitFactors factors = new UnitFactors();
  private final Map<Field, NameIndex<String>> choices = new IdentityHashMap<>();

  public FindingsReader(Protocol protocol) {
    this.given = protocol.givenFields();
    this.fields = NameIndex.of(protocol.fields(), Field::name);
    this.names = given.stream().map(Field::name).toList();
    this.stages = protocol.about().stages();
    given.forEach(
        field -> choices.put(field, NameIndex.of(field.symbol().choices(), choice -> choice)));
  }

  /**
   * The case's findings.
   *
   * @throws RejectedException listing every fault of the case
   */
  public Findings read(Case given) {
    Issues issues = new Issues();
    int stage = stage(given, issues);
    Map<Field, ValueSet> stated = new IdentityHashMap<>();
    Map<Field, Case.Finding> seen = new IdentityHashMap<>();
    for (Case.Finding finding : given.findings()) {
      Place place = finding.place();
      Optional<Field> field = field(finding.field(), stage, place, issues);
      Case.Finding earlier = field.map(known -> seen.putIfAbsent(known, finding)).orElse(null);
      if (earlier != null) {
        issues.error("C002", place, "the field is stated twice, also " + where(earlier));
      }
      field
          .flatMap(known -> reader(known, place, issues).read(finding.given()))
          .ifPresent(values -> stated.put(field.orElseThrow(), values));
    }
    if (issues.hasErrors()) {
      throw new RejectedException(issues.list());
    }
    List<Datum> data = this.given.stream().map(field -> datum(field, stage, stated)).toList();
    List<Issue> remarks = new ArrayList<>(issues.list());
    return new Findings(given.title(), stages.get(stage), data, remarks);
  }

  private GivenReader reader(Field field, Place place, Issues issues) {
    NameIndex<String> ofField = Objects.requireNonNull(choices.get(field));
    return new GivenReader(field, ofField, factors, place, issues);
  }

  private static String where(Case.Finding finding) {
    return finding.place() instanceof Place.InCase
        ? "as `" + finding.field() + "`"
        : "at " + finding.place().plain();
  }

  private static String shortened(String name) {
    return name.length() <= LONGEST_QUOTED ? name : name.substring(0, LONGEST_QUOTED) + "...";
  }

  private int stage(Case given, Issues issues) {
    Optional<String> named = given.stage();
    if (named.isEmpty()) {
      return 0;
    }
    Optional<String> known = NameIndex.of(stages, name -> name).find(named.get());
    if (known.isEmpty()) {
      issues.error(
          "C009",
          given.stagePlace(),
          "`" + named.get() + "` is not a stage of this protocol",
          NearestWord.help(named.get(), stages));
    }
    return known.map(stages::indexOf).orElse(0);
  }

  private Optional<Field> field(String name, int stage, Place place, Issues issues) {
    Optional<Field> field = fields.find(name);
    if (field.isEmpty()) {
      issues.error(
          "C001",
          place,
          place instanceof Place.InCase
              ? "this protocol has no such field"
              : "this protocol has no field `" + shortened(name) + "`",
          NearestWord.to(name, names).map(nearest -> "did you mean `" + nearest + "`?"));
      return field;
    }
    if (!field.get().isGiven()) {
      issues.error("C003", place, "the protocol decides this itself, so a case cannot state it");
      return Optional.empty();
    }
    if (field.get().stage() > stage) {
      String later = stages.get(field.get().stage());
      issues.error(
          "C010",
          place,
          "this is a finding of the stage `"
              + later
              + "`, but the case is at `"
              + stages.get(stage)
              + "`",
          "state the stage of the case as `" + later + "`");
      return Optional.empty();
    }
    return field;
  }

  private static Datum datum(Field field, int stage, Map<Field, ValueSet> stated) {
    ValueSet values = stated.get(field);
    if (field.stage() > stage) {
      return new Datum(field, Knowledge.NOT_YET, PossibleValues.nothing(field.symbol().type()));
    }
    if (values == null) {
      return new Datum(field, Knowledge.MISSING, PossibleValues.of(field.allowed()));
    }
    boolean one = values.single().isPresent();
    return new Datum(field, one ? Knowledge.RECORDED : Knowledge.PARTLY, PossibleValues.of(values));
  }
}
