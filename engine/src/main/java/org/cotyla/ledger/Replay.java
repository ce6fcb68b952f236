package org.cotyla.ledger;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.cotyla.evaluate.Engine;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.identity.CanonicalJson;
import org.cotyla.identity.CaseDigest;
import org.cotyla.identity.EngineVersion;
import org.cotyla.issue.RejectedException;
import org.cotyla.json.RecommendationJson;
import org.cotyla.json.RecordedCase;

/** Runs recorded cases again with the workbook of their day. Not safe to share between threads. */
final class Replay {

  private static final int ENGINES_HELD = 4;

  private final LedgerSource source;
  private final Collection<FormulaFunction> functions;
  private final Map<String, Held> held = new LinkedHashMap<>(16, 0.75f, true);

  /** A kept workbook that was read, with its engine. */
  private record Held(ProtocolFile file, Engine engine) {}

  Replay(LedgerSource source, Collection<FormulaFunction> functions) {
    this.source = source;
    this.functions = List.copyOf(functions);
  }

  /** The kept workbook that a protocol was read from; nothing when it is not there or changed. */
  Optional<ProtocolFile> workbook(ProtocolVersion version, Consumer<String> faults) {
    return held(version, faults).map(Held::file);
  }

  private Optional<Held> held(ProtocolVersion version, Consumer<String> faults) {
    Held known = held.get(version.workbook());
    Optional<Held> now = known != null ? Optional.of(known) : read(version.workbook(), faults);
    now.ifPresent(found -> hold(version.workbook(), found));
    now.filter(found -> !found.file().version().isSameAs(version))
        .ifPresent(other -> faults.accept("the kept workbook holds another protocol than it says"));
    return now;
  }

  private Optional<Held> read(String digest, Consumer<String> faults) {
    Optional<byte[]> bytes = document(digest, "workbook", faults);
    try {
      return bytes
          .map(workbook -> ProtocolFile.read("kept workbook", workbook, functions))
          .map(file -> new Held(file, Engine.of(file.protocol())));
    } catch (RejectedException unreadable) {
      faults.accept("the kept workbook cannot be read: " + unreadable.issues().get(0).message());
      return Optional.empty();
    }
  }

  private void hold(String digest, Held found) {
    held.put(digest, found);
    if (held.size() > ENGINES_HELD) {
      held.remove(held.keySet().iterator().next());
    }
  }

  private Optional<byte[]> document(String digest, String what, Consumer<String> faults) {
    Optional<byte[]> bytes = source.document(digest);
    if (bytes.isEmpty()) {
      faults.accept("the " + what + " that was kept for it is not there");
    } else if (!CanonicalJson.digest(bytes.get()).equals(digest)) {
      faults.accept("the " + what + " that was kept for it was exchanged or changed");
      return Optional.empty();
    }
    return bytes;
  }

  /** Whether what was kept for it is there and fits; without running anything. */
  Optional<byte[]> kept(Content.Recommendation recorded, Consumer<String> faults) {
    if (!CanonicalJson.digest(recorded.findings().getBytes(StandardCharsets.UTF_8))
        .equals(recorded.caseDigest())) {
      faults.accept("its findings are not those of its case digest");
    }
    return document(recorded.recommendation(), "recommendation", faults);
  }

  /** Runs it again and says what differs. */
  void run(Content.Recommendation recorded, Consumer<String> faults) {
    Optional<byte[]> kept = kept(recorded, faults);
    held(recorded.protocol(), faults)
        .ifPresent(workbook -> compare(recorded, workbook, kept, faults));
  }

  private static void compare(
      Content.Recommendation recorded,
      Held workbook,
      Optional<byte[]> kept,
      Consumer<String> faults) {
    Recommendation again;
    try {
      again =
          workbook
              .engine()
              .evaluate(
                  RecordedCase.read(
                      recorded.findings(), recorded.caseReference(), workbook.file().protocol()));
    } catch (RejectedException | IllegalArgumentException refused) {
      faults.accept("its findings cannot be run again with the kept workbook");
      return;
    }
    String text = asRecorded(RecommendationJson.write(again), recorded.engineVersion());
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    kept.filter(whole -> !Arrays.equals(whole, bytes))
        .ifPresent(whole -> faults.accept(firstDifference(whole, text)));
    boolean same =
        CaseDigest.canonical(again.findings()).equals(recorded.findings())
            && again.findings().stage().equals(recorded.stage())
            && workbook.file().version().equals(recorded.protocol())
            && AdviceOf.of(again).equals(recorded.advice());
    if (!same) {
      faults.accept("run again, it does not come to what the entry says in short");
    }
  }

  /** Another version of the engine says so in its answer, which is no difference of the advice. */
  private static String asRecorded(String text, String version) {
    String current = EngineVersion.current();
    return version.equals(current)
        ? text
        : text.replaceFirst(
            java.util.regex.Pattern.quote("\"engineVersion\": \"" + current + "\""),
            java.util.regex.Matcher.quoteReplacement("\"engineVersion\": \"" + version + "\""));
  }

  private static String firstDifference(byte[] kept, String again) {
    String[] before = new String(kept, StandardCharsets.UTF_8).split("\n", -1);
    String[] after = again.split("\n", -1);
    int line = 0;
    while (line < Math.min(before.length, after.length) && before[line].equals(after[line])) {
      line++;
    }
    return "run again, the recommendation differs from line " + (line + 1) + " on";
  }
}
