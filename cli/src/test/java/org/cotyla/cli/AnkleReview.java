package org.cotyla.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.explain.Replan;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.protocol.Protocol;

/**
 * The invented protocol about sprained ankles with a stress film at review that can change the
 * grade, and plans that are run again with what the film shows.
 */
public final class AnkleReview {

  private static final String PLAN =
      """
      {"title": "A light sprain", "findings": {
        "swelling": "mild", "able to walk": true, "skin blisters": false, "demand": "low",
        "days since injury": 1, "bone tenderness": false}}
      """;

  private static final Map<String, String> LATER = new LinkedHashMap<>();

  static {
    LATER.put("torn", "{\"findings\": {\"talar tilt\": 14, \"bone tenderness\": true}}");
    LATER.put(
        "blisters",
        "{\"findings\": {\"talar tilt\": {\"value\": 2}, \"swelling\": \"severe\","
            + " \"skin blisters\": true, \"demand\": \"low\"}}");
    LATER.put("same", "{\"findings\": {\"talar tilt\": 2, \"swelling\": \"mild\"}}");
    LATER.put("open", "{\"findings\": {\"bone tenderness\": false}}");
  }

  private AnkleReview() {}

  /** The protocol. */
  public static Protocol protocol() {
    return TextProtocol.ankle(
        text ->
            text.replace(
                    "Grade of the sprain\nhit policy | U", "Grade of the sprain\nhit policy | F")
                .replace(
                    "id | when | when | then | because | source\n| swelling | able to walk",
                    "id | when | when | when | then | because | source\n"
                        + "| talar tilt | swelling | able to walk")
                .replaceAll("(?m)^(GR-\\d) \\|", "$1 | - |")
                .replace(
                    "GR-1 | -",
                    "GR-0 | > 10 | - | - | 3 | The joint gapes on the film. | TRIAL-9\nGR-1 | -"));
  }

  /** The planned case. */
  public static Case plan() {
    return CaseJson.read(PLAN);
  }

  /** The names of the later findings. */
  public static List<String> names() {
    return List.copyOf(LATER.keySet());
  }

  /** What was found later, by its name. */
  public static Case later(String name) {
    return CaseJson.read(LATER.get(name));
  }

  /** The plan run again with what was found later. */
  public static Replan replan(String name) {
    return Replan.of(Engine.of(protocol()), plan(), later(name));
  }

  /** Digests have tests of their own; an answer that was read is not compared by them. */
  public static String withoutDigests(String answer) {
    return answer.replaceAll("sha256:[0-9a-f]+", "<digest>");
  }
}
