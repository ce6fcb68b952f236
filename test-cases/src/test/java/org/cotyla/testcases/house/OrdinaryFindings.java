package org.cotyla.testcases.house;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The findings of {@link OrdinaryCase}, group by group as the protocol asks for them. */
final class OrdinaryFindings {

  static final Map<String, Object> PLANNING = planning();

  static final Map<String, Object> THEATRE =
      Map.ofEntries(
          Map.entry("theatre defect class", "as planned"),
          Map.entry("ischium on stress", "firm"),
          Map.entry("cup in theatre", "as planned"),
          Map.entry("trial cup", "not tried"),
          Map.entry("abductors in theatre", "as planned"),
          Map.entry("purulence", "none"),
          Map.entry("histology", "not done"),
          Map.entry("theatre cultures", "not known"),
          Map.entry("break in theatre", "none"),
          Map.entry("custom device in the room", false),
          Map.entry("trial stability", "not tried"));

  private OrdinaryFindings() {}

  private static Map<String, Object> planning() {
    Map<String, Object> findings = new LinkedHashMap<>();
    failure(findings);
    bone(findings);
    biology(findings);
    infection(findings);
    patient(findings);
    stability(findings);
    implants(findings);
    toHand(findings);
    return Collections.unmodifiableMap(findings);
  }

  private static void failure(Map<String, Object> findings) {
    findings.put("reason for revision", "loosening");
    findings.put("side", "right");
    findings.put("cup fixation", "loose");
    findings.put("cup position", "well placed");
    findings.put("kept shell usable", false);
    findings.put("intrapelvic hardware", "none");
    findings.put("years since last operation", 11);
    findings.put("earlier revisions", 0);
    findings.put("earlier cup", "uncemented");
    findings.put("earlier approach", "posterior");
    findings.put("stiff hip", false);
  }

  private static void bone(Map<String, Object> findings) {
    findings.put("hip centre migration", 0);
    findings.put("migration direction", "none");
    findings.put("ischial lysis", 0);
    findings.put("teardrop lysis", "none");
    findings.put("köhler line", "intact");
    findings.put("rim loss", 0);
    findings.put("posterior wall", "intact");
    findings.put("medial wall", "intact");
    findings.put("defect contained", true);
    findings.put("cavity shape", "spherical");
    findings.put("host bone contact", 75);
    findings.put("contact found by", "estimate");
    findings.put("dome support", "good");
    findings.put("anterior column", "intact");
    findings.put("posterior column", "intact");
    findings.put("column fracture line", "none");
    findings.put("ilioischial step", false);
    findings.put("obturator foramina", "equal");
    findings.put("break onset", "none");
    findings.put("ct scan", true);
    findings.put("ct age", 1);
    findings.put("oblique views", true);
    findings.put("ct angiography", false);
    findings.put("hip fused", false);
    findings.put("bone hardness", "normal");
    findings.put("ap dimension", 54);
    findings.put("vertical dimension", 57);
    findings.put("native diameter", 48);
  }

  private static void biology(Map<String, Object> findings) {
    findings.put("pelvic irradiation", false);
    findings.put("pelvic metastasis", false);
    findings.put("metabolic bone disease", false);
    findings.put("socket osteonecrosis", false);
    findings.put("inflammatory arthritis", false);
  }

  private static void infection(Map<String, Object> findings) {
    findings.put("sinus tract", false);
    findings.put("crp", 4);
    findings.put("esr", 12);
    findings.put("d dimer measured", false);
    findings.put("joint aspiration", "fluid");
    findings.put("synovial white cells", 400);
    findings.put("synovial neutrophils", 30);
    findings.put("leukocyte esterase", "negative");
    findings.put("alpha defensin", "not done");
    findings.put("synovial crp measured", false);
    findings.put("culture results", "no growth");
    findings.put("recent antibiotics", false);
    findings.put("metal bearing", false);
  }

  private static void patient(Map<String, Object> findings) {
    findings.put("age", 68);
    findings.put("sex", "female");
    findings.put("life expectancy", 14);
    findings.put("demand", "moderate");
    findings.put("frailty", "fit");
    findings.put("neuromuscular disease", "none");
    findings.put("cognitive impairment", false);
    findings.put("nerve deficit", false);
    findings.put("blood products accepted", true);
  }

  private static void stability(Map<String, Object> findings) {
    findings.put("prior dislocations", 0);
    findings.put("abductors", "working");
    findings.put("greater trochanter", "united");
    findings.put("spine films", false);
    findings.put("fused levels", 0);
    findings.put("stem position", "well placed");
    findings.put("impingement", false);
    findings.put("liner wear", false);
  }

  private static void implants(Map<String, Object> findings) {
    findings.put("stem plan", "kept with sound taper");
    findings.put("planned angles", "not planned yet");
    findings.put("stem geometry known", false);
    findings.put("planned cup diameter", 56);
    findings.put("planned head diameter", 36);
    findings.put("leg lengthening planned", 10);
    findings.put("planned centre rise", 5);
    findings.put("stem fixation", "well fixed");
  }

  private static void toHand(Map<String, Object> findings) {
    findings.put("porous metal to hand", true);
    findings.put("bone bank", true);
    findings.put("custom device obtainable", true);
    findings.put("days until operation", 90);
    findings.put("date can move", true);
  }
}
