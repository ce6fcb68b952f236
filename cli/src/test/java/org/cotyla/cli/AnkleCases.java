package org.cotyla.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finding.Case;
import org.cotyla.json.CaseJson;
import org.cotyla.protocol.Protocol;

/** Invented cases of sprained ankles, each for one thing that an answer must show. */
public final class AnkleCases {

  private static final Map<String, String> CASES = new LinkedHashMap<>();

  static {
    put("complete", "severe", "true", "false", "low", "1");
    put("tie", "mild", "false", "false", "high", "4");
    put("ruled-out", "severe", "true", "true", "low", "1");
    put("contradiction", "moderate", "false", "false", "low", "1");
    CASES.put(
        "incomplete",
        """
        {"title": "Little is known", "findings": {
          "swelling": {"one of": ["mild", "severe"]}, "demand": "high",
          "days since injury": 30, "skin blisters": false}}
        """);
    CASES.put("blank", "{\"findings\": {}}");
  }

  private AnkleCases() {}

  private static void put(
      String name, String swelling, String walks, String blisters, String demand, String days) {
    CASES.put(
        name,
        """
        {"title": "%s", "findings": {
          "swelling": "%s", "able to walk": %s, "skin blisters": %s, "demand": "%s",
          "days since injury": %s, "bone tenderness": false}}
        """
            .formatted("Case " + name, swelling, walks, blisters, demand, days));
  }

  /** The names of the cases. */
  public static Iterable<String> names() {
    return CASES.keySet();
  }

  /** A case by its name. */
  public static Case named(String name) {
    return CaseJson.read(CASES.get(name));
  }

  /** What the ankle protocol says on a case. */
  public static Recommendation recommendation(String name) {
    return recommendation(TextProtocol.ankle(), name);
  }

  /** What a protocol says on a case. */
  public static Recommendation recommendation(Protocol protocol, String name) {
    return Engine.of(protocol).evaluate(named(name));
  }
}
