package org.cotyla.finite;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cotyla.finding.Datum;
import org.cotyla.finding.Datum.Knowledge;
import org.cotyla.finding.Findings;
import org.cotyla.name.Names;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueSet;

/**
 * The cases that a question is about: which stages a case can be at, and what each given field can
 * be once its stage is reached. Immutable.
 */
public final class Domain {

  private final List<String> stageNames;
  private final List<Integer> stages;
  private final Map<String, ValueSet> values;

  private Domain(List<String> stageNames, List<Integer> stages, Map<String, ValueSet> values) {
    this.stageNames = List.copyOf(stageNames);
    this.stages = List.copyOf(stages);
    this.values = Map.copyOf(values);
  }

  /** Every complete case of the protocol, at every stage. */
  public static Domain of(Protocol protocol) {
    return shared(List.of(protocol));
  }

  /**
   * Every complete case that all of the protocols accept; their stages must be the same. A field
   * whose type, unit or stage differs between them, or of which they allow no common value, is as
   * open as each protocol leaves it, and nothing that hangs on it can be asked of two of them at
   * once.
   */
  public static Domain shared(List<Protocol> protocols) {
    Map<String, Field> fields = new HashMap<>();
    Map<String, ValueSet> values = new HashMap<>();
    Set<String> unlike = new HashSet<>();
    for (Protocol protocol : protocols) {
      for (Field field : protocol.givenFields()) {
        String key = Names.key(field.name());
        Field other = fields.putIfAbsent(key, field);
        if ((other != null && !isAlike(field, other))
            || values.merge(key, field.allowed(), ValueSet::intersect).isEmpty()) {
          unlike.add(key);
        }
      }
    }
    values.keySet().removeAll(unlike);
    List<String> names = protocols.get(0).about().stages();
    return new Domain(names, IntStream.range(0, names.size()).boxed().toList(), values);
  }

  /** Whether what a case states of the one field can be stated of the other, and means the same. */
  public static boolean isAlike(Field field, Field other) {
    return field.symbol().type() == other.symbol().type()
        && field.symbol().isChoice() == other.symbol().isChoice()
        && field.unit().equals(other.unit())
        && field.stage() == other.stage()
        && field.allowed().intersects(other.allowed());
  }

  /** Every way to fill in what the findings leave open, at their stage. */
  public static Domain of(Protocol protocol, Findings findings) {
    Map<String, ValueSet> values = new HashMap<>();
    for (Datum datum : findings.data()) {
      boolean notYet = datum.knowledge() == Knowledge.NOT_YET;
      values.put(
          Names.key(datum.field().name()),
          notYet ? datum.field().allowed() : datum.value().values());
    }
    List<String> names = protocol.about().stages();
    return new Domain(names, List.of(names.indexOf(findings.stage())), values);
  }

  /** The same, but these fields can be anything that they may be. */
  public Domain freed(Collection<Field> fields) {
    Map<String, ValueSet> changed = new HashMap<>(values);
    fields.forEach(field -> changed.put(Names.key(field.name()), field.allowed()));
    return new Domain(stageNames, stages, changed);
  }

  List<Integer> stages() {
    return stages;
  }

  ValueSet values(Field field) {
    return values.getOrDefault(Names.key(field.name()), field.allowed());
  }

  /** Whether some field can have no value at all, so that there is no such case. */
  public boolean isEmpty() {
    return values.values().stream().anyMatch(ValueSet::isEmpty);
  }

  /** A complete case of the domain by chance; ends and thresholds are no likelier than others. */
  public Findings sample(Protocol protocol, SplittableRandom random) {
    int stage = stages.get(random.nextInt(stages.size()));
    Map<String, PossibleValues> stated = new HashMap<>();
    for (Field field : protocol.givenFields()) {
      ValueSet possible = values(field);
      if (field.stage() <= stage && !possible.isEmpty()) {
        stated.put(
            Names.key(field.name()), PossibleValues.of(Representative.sample(possible, random)));
      }
    }
    return findings(protocol, stage, stated);
  }

  /** The findings at a stage where every field is as open as the domain leaves it. */
  Findings findings(Protocol protocol, int stage, Map<String, PossibleValues> stated) {
    List<Datum> data = new ArrayList<>();
    for (Field field : protocol.givenFields()) {
      data.add(datum(field, stage, Optional.ofNullable(stated.get(Names.key(field.name())))));
    }
    return new Findings("", stageNames.get(stage), data, List.of());
  }

  private Datum datum(Field field, int stage, Optional<PossibleValues> stated) {
    if (field.stage() > stage) {
      return new Datum(field, Knowledge.NOT_YET, PossibleValues.nothing(field.symbol().type()));
    }
    PossibleValues value = stated.orElseGet(() -> PossibleValues.of(values(field)));
    Knowledge knowledge =
        value.single().isPresent()
            ? Knowledge.RECORDED
            : value.values().equals(field.allowed()) ? Knowledge.MISSING : Knowledge.PARTLY;
    return new Datum(field, knowledge, value);
  }
}
