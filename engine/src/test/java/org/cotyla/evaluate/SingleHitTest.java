package org.cotyla.evaluate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SingleHitTest {

  private static final Map<String, Object> NOTHING_KNOWN = Map.of();
  private static final Map<String, Object> WIDE = Map.of("width", 60, "grade", "low");

  @Test
  @DisplayName("U: the one row that matches decides")
  void unique() {
    SmallProtocol.classes("U", "> 50|low|A", "<= 50|-|B").assertClass(WIDE, "A", "K-1 decides");
  }

  @Test
  @DisplayName(
      "U: two rows that match are a contradiction that names both; either may be the result")
  void uniqueTwice() {
    SmallProtocol protocol = SmallProtocol.classes("U", "> 50|-|A", "> 40|-|B", "< 9|-|C");
    protocol.assertClass(WIDE, "A, B", "K-1 may decide", "K-2 may decide");
    DecisionResult result = protocol.decision("Class", WIDE);
    assertThat(result.faults())
        .extracting(Fault::plain)
        .containsExactly(
            "error E001 Class: rows `K-1` (Class!A8) and `K-2` (Class!A9) all match, but hit policy"
                + " U allows only one");
    assertThat(result.isCertain()).isFalse();
  }

  @Test
  @DisplayName("U: a row that matches and one that may are no contradiction yet")
  void uniqueOpen() {
    SmallProtocol protocol = SmallProtocol.classes("U", "> 50|-|A", "-|high|B");
    Map<String, Object> findings = Map.of("width", 60);
    protocol.assertClass(findings, "A, B", "K-1 may decide", "K-2 may decide");
    assertThat(protocol.decision("Class", findings).faults()).isEmpty();
  }

  @Test
  @DisplayName("A: rows that agree are one result; a row that only may match only may decide")
  void anyAgrees() {
    SmallProtocol protocol = SmallProtocol.classes("A", "> 50|-|A", "> 40|-|A", "-|high|A");
    protocol.assertClass(Map.of("width", 60), "A", "K-1 decides", "K-2 decides", "K-3 may decide");
    assertThat(protocol.decision("Class", Map.of("width", 60)).isCertain()).isTrue();
  }

  @Test
  @DisplayName("A: rows that differ are a contradiction that names them")
  void anyDiffers() {
    SmallProtocol protocol = SmallProtocol.classes("A", "> 50|-|A", "> 40|-|B");
    protocol.assertClass(WIDE, "A, B", "K-1 may decide", "K-2 may decide");
    assertThat(protocol.decision("Class", WIDE).faults())
        .extracting(Fault::plain)
        .containsExactly(
            "error E002 Class: rows `K-1` (Class!A8) and `K-2` (Class!A9) all match but do not give"
                + " the same, which hit policy A demands");
  }

  @Test
  @DisplayName("A: results that may still be the same are no contradiction")
  void anyOpenResults() {
    SmallProtocol protocol = SmallProtocol.numbers("A", "-|width + 1", "-|9");
    assertThat(protocol.decision("Load", NOTHING_KNOWN).faults()).isEmpty();
    assertThat(protocol.decision("Load", Map.of("width", 7)).faults()).hasSize(1);
    assertThat(protocol.decision("Load", Map.of("width", 8)).faults()).isEmpty();
  }

  @Test
  @DisplayName("P: the highest priority of the result decides, whatever the order of the sheet")
  void priority() {
    SmallProtocol.classes("P", "-|-|C", "> 50|-|A", "-|low|B")
        .assertClass(WIDE, "A", "K-2 decides", "K-1 set aside", "K-3 set aside");
  }

  @Test
  @DisplayName("P: of rows with one result the first of the sheet decides")
  void priorityTie() {
    SmallProtocol.classes("P", "-|-|B", "> 50|-|B")
        .assertClass(WIDE, "B", "K-1 decides", "K-2 set aside");
  }

  @Test
  @DisplayName("P: a row of higher priority that may match leaves both possible, a lower one none")
  void priorityOpen() {
    SmallProtocol.classes("P", "-|-|B", "> 50|-|A", "> 60|-|C")
        .assertClass(NOTHING_KNOWN, "A, B", "K-2 may decide", "K-1 may decide", "K-3 set aside");
  }

  @Test
  @DisplayName("F: the first row that matches decides; rows before it that may match may decide")
  void first() {
    SmallProtocol protocol = SmallProtocol.classes("F", "> 50|-|A", "-|low|B", "-|-|C");
    protocol.assertClass(WIDE, "A", "K-1 decides", "K-2 set aside", "K-3 set aside");
    protocol.assertClass(
        Map.of("grade", "low"), "A, B", "K-1 may decide", "K-2 may decide", "K-3 set aside");
  }

  @Test
  @DisplayName("No row matches: the default row's result, or nothing")
  void noMatch() {
    Map<String, Object> narrow = Map.of("width", 5, "grade", "low");
    SmallProtocol.classes("U", "> 50|-|A").assertClass(narrow, "nothing");
    SmallProtocol withDefault = SmallProtocol.classes("U", "> 50|-|A", "default|-|-|C");
    withDefault.assertClass(narrow, "C");
    assertThat(withDefault.decision("Class", narrow).byDefault()).isTrue();
    withDefault.assertClass(Map.of("grade", "low"), "A, C", "K-1 may decide");
    assertThat(withDefault.decision("Class", NOTHING_KNOWN).mayBeByDefault()).isTrue();
  }

  @Test
  @DisplayName("Rows that together leave no way open rule out 'nothing' and the default")
  void coverage() {
    SmallProtocol.classes("U", "> 50|-|A", "<= 50|low|B", "<= 50|high|C", "default|-|-|C")
        .assertClass(
            NOTHING_KNOWN, "A, B, C", "K-1 may decide", "K-2 may decide", "K-3 may decide");
    assertThat(
            SmallProtocol.classes("U", "> 50|-|A", "<= 50|low|A", "<= 50|high|A")
                .decision("Class", NOTHING_KNOWN)
                .outputs()
                .get("class")
                .plain())
        .isEqualTo("A");
    SmallProtocol gap = SmallProtocol.classes("U", "> 50|-|A", "< 50|-|B");
    gap.assertClass(NOTHING_KNOWN, "A, B or nothing", "K-1 may decide", "K-2 may decide");
  }

  @Test
  @DisplayName("An endpoint that is open leaves its row open although its column is known")
  void openEndpoint() {
    SmallProtocol protocol =
        SmallProtocol.classes("F", "<= depth|-|A", "-|-|B").field("depth", "[0..100]");
    Map<String, Object> deep = Map.of("width", 60, "grade", "low", "depth", 61);
    protocol.assertClass(WIDE, "A, B", "K-1 may decide", "K-2 may decide");
    protocol.assertClass(deep, "A", "K-1 decides", "K-2 set aside");
  }
}
