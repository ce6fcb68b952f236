package org.cotyla.testcases.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.finding.Case;

/**
 * One complete invented case, from which a check changes a few findings. Immutable.
 *
 * <p>As it stands it is the plainest revision that there is: a loose uncemented cup in a woman of
 * 68, whole bone, no infection, working abductors, every implant to hand.
 */
public final class OrdinaryCase {

  private final String stage;
  private final Map<String, Object> findings;

  private OrdinaryCase(String stage, Map<String, Object> findings) {
    this.stage = stage;
    this.findings = Collections.unmodifiableMap(findings);
  }

  /** At planning, with everything stated that is asked for. */
  public static OrdinaryCase planned() {
    return new OrdinaryCase("planning", new LinkedHashMap<>(OrdinaryFindings.PLANNING));
  }

  /** The same finding by finding, but with another value for one field. */
  public OrdinaryCase with(String field, Object value) {
    Map<String, Object> changed = new LinkedHashMap<>(findings);
    changed.put(field, value);
    return new OrdinaryCase(stage, changed);
  }

  public OrdinaryCase with(Map<String, ?> values) {
    Map<String, Object> changed = new LinkedHashMap<>(findings);
    changed.putAll(values);
    return new OrdinaryCase(stage, changed);
  }

  /** The same, but with nothing stated for one field. */
  public OrdinaryCase without(String field) {
    Map<String, Object> changed = new LinkedHashMap<>(findings);
    if (changed.remove(field) == null) {
      throw new IllegalArgumentException("`" + field + "` is not stated");
    }
    return new OrdinaryCase(stage, changed);
  }

  /** The same case in theatre, where nothing unexpected has been found. */
  public OrdinaryCase inTheatre() {
    Map<String, Object> changed = new LinkedHashMap<>(findings);
    changed.putAll(OrdinaryFindings.THEATRE);
    changed.put("host bone contact in theatre", findings.get("host bone contact"));
    return new OrdinaryCase("theatre", changed);
  }

  public boolean isInTheatre() {
    return stage.equals("theatre");
  }

  /** What is stated of a field; null when nothing is. */
  public Object get(String field) {
    return findings.get(field);
  }

  /** What is stated of a field that holds a number. */
  public int number(String field) {
    return ((Number) findings.get(field)).intValue();
  }

  public Map<String, Object> findings() {
    return findings;
  }

  public Answer answer() {
    return answer(House.engine());
  }

  public Answer answer(Engine engine) {
    return new Answer(engine.evaluate(Case.of(findings).atStage(stage)));
  }

  /** The stage and whatever is not as in the ordinary case. */
  @Override
  public String toString() {
    Map<String, Object> unusual = new LinkedHashMap<>(findings);
    unusual.entrySet().removeAll(OrdinaryFindings.PLANNING.entrySet());
    unusual.entrySet().removeAll(OrdinaryFindings.THEATRE.entrySet());
    return stage + " " + unusual;
  }
}
