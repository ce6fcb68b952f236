package org.cotyla.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.identity.EngineVersion;
import org.cotyla.ledger.Breach.How;

/**
 * What checking a whole ledger came to.
 *
 * @param entries how many rows there are
 * @param recommendations how many recommendations were run again
 * @param signatures how many signatures were checked
 * @param otherEngines how many recommendations another version of the engine had made
 * @param head the last entry's digest
 * @param breaches what does not hold, the earliest entry first
 * @param remarks what is worth knowing and breaks nothing
 */
public record Verification(
    long entries,
    long recommendations,
    long signatures,
    long otherEngines,
    String head,
    List<Breach> breaches,
    List<String> remarks) {

  public Verification {
    breaches = List.copyOf(breaches);
    remarks = List.copyOf(remarks);
  }

  public boolean holds() {
    return breaches.isEmpty();
  }

  /**
   * Checks a ledger: the chain, the signatures, and every recommendation by running it again.
   *
   * @param functions what the formulas of kept workbooks may call
   * @param checkpoint a signed state that was kept elsewhere
   * @param runAgain whether recommendations are run again, which takes most of the time
   */
  public static Verification of(
      Ledger ledger,
      Collection<FormulaFunction> functions,
      Optional<CheckpointFile> checkpoint,
      boolean runAgain) {
    int processors = Runtime.getRuntime().availableProcessors();
    try (LedgerReading lookUp = ledger.reader();
        Replays replays = new Replays(ledger, functions, processors)) {
      return new Walk(ledger, lookUp, new ContentCheck(lookUp, functions), replays, runAgain)
          .walk(checkpoint);
    }
  }

  /** One walk through a ledger. Used once. */
  private static final class Walk {

    private final Ledger ledger;
    private final LedgerReading lookUp;
    private final ContentCheck contents;
    private final Replays replays;
    private final boolean runAgain;
    private final List<Breach> breaches = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final Set<String> everKnown = new HashSet<>();
    private long entries;
    private long recommendations;
    private long signatures;
    private long otherEngines;
    private long backwards;
    private String head = Entry.NONE_BEFORE;
    private Instant latest = Instant.MIN;

    Walk(
        Ledger ledger,
        LedgerReading lookUp,
        ContentCheck contents,
        Replays replays,
        boolean runAgain) {
      this.ledger = ledger;
      this.lookUp = lookUp;
      this.contents = contents;
      this.replays = replays;
      this.runAgain = runAgain;
    }

    Verification walk(Optional<CheckpointFile> checkpoint) {
      // Before the entries, since others may write meanwhile: a document comes with its entry.
      List<String> kept = lookUp.documents();
      lookUp
          .check(DatabaseCheck::damage)
          .ifPresent(damage -> breaches.add(new Breach(0, How.ALTERED, damage)));
      lookUp.check(DatabaseCheck::changedGuards).ifPresent(remarks::add);
      ChainCheck chain = new ChainCheck(ledger);
      try (Stream<StoredEntry> rows = ledger.stored()) {
        rows.forEach(
            row -> {
              entries++;
              head = row.digest();
              chain.next(row, breaches::add).ifPresent(this::content);
            });
      }
      replays.finish(breaches::add);
      if (entries == 0) {
        breaches.add(new Breach(1, How.MISSING, "the ledger has no entries, not even a founding"));
      }
      checkpoint.ifPresent(then -> hold(then, chain.lastSequence()));
      documents(kept);
      remark();
      breaches.sort(
          Comparator.comparingLong(Walk::inOrder)
              .thenComparing(breach -> breach.how() == How.ALTERED));
      return new Verification(
          entries,
          recommendations,
          signatures,
          otherEngines,
          head,
          breaches.stream().distinct().toList(),
          remarks);
    }

    /** What is said of the ledger as a whole comes last. */
    private static long inOrder(Breach breach) {
      return breach.sequence() == 0 ? Long.MAX_VALUE : breach.sequence();
    }

    private void content(Entry entry) {
      if (entry.time().isBefore(latest)) {
        backwards++;
      } else {
        latest = entry.time();
      }
      if (KeyRules.signature(entry.content()).isPresent()) {
        signatures++;
      }
      if (entry.content() instanceof Content.Recommendation recommendation) {
        recommendations++;
        if (!recommendation.engineVersion().equals(EngineVersion.current())) {
          otherEngines++;
        }
        if (runAgain) {
          replays.run(entry.sequence(), recommendation, breaches::add);
        }
      }
      contents.next(entry, fault -> breaches.add(new Breach(entry.sequence(), How.ALTERED, fault)));
      contents.governance().keys().forEach(key -> everKnown.add(key.name()));
    }

    private void hold(CheckpointFile kept, long last) {
      if (!kept.isSound()) {
        breaches.add(
            new Breach(0, How.ALTERED, "the signature of the checkpoint file does not hold"));
      } else if (!kept.ledger().equals(contents.governance().ledger())) {
        breaches.add(new Breach(0, How.ALTERED, "the checkpoint is of another ledger"));
      } else if (!everKnown.contains(kept.signature().key())) {
        breaches.add(
            new Breach(0, How.ALTERED, "the key of the checkpoint never counted in this ledger"));
      } else if (kept.entry() > last) {
        breaches.add(
            new Breach(
                last + 1,
                How.TRUNCATED,
                "the checkpoint of "
                    + kept.time()
                    + " saw entries up to "
                    + kept.entry()
                    + ", and the last one here is "
                    + last));
      } else {
        sameAsThen(kept);
      }
    }

    private void sameAsThen(CheckpointFile kept) {
      boolean same =
          digestAt(kept.sequence()).filter(kept.digest()::equals).isPresent() && isIn(kept);
      if (!same) {
        breaches.add(
            new Breach(
                kept.sequence(),
                How.ALTERED,
                "it or one before it is not what the checkpoint of " + kept.time() + " signed"));
      }
    }

    private Optional<String> digestAt(long sequence) {
      try {
        return lookUp.entry(sequence).map(Entry::digest);
      } catch (UnreadableEntryException reportedElsewhere) {
        return Optional.empty();
      }
    }

    private boolean isIn(CheckpointFile kept) {
      try {
        return lookUp
            .entry(kept.entry())
            .filter(
                entry ->
                    entry.content() instanceof Content.Checkpoint known
                        && known.signature().equals(kept.signature()))
            .isPresent();
      } catch (UnreadableEntryException reportedElsewhere) {
        return false;
      }
    }

    private void documents(List<String> kept) {
      long strangers =
          kept.stream().filter(document -> !contents.documents().contains(document)).count();
      if (strangers > 0) {
        breaches.add(
            new Breach(
                0,
                How.INSERTED,
                strangers
                    + (strangers == 1 ? " kept document belongs" : " kept documents belong")
                    + " to no entry"));
      }
    }

    private void remark() {
      if (otherEngines > 0 && runAgain) {
        remarks.add(
            otherEngines
                + (otherEngines == 1 ? " recommendation was" : " recommendations were")
                + " made by another version of the engine than this one, "
                + EngineVersion.current()
                + "; compared all the same");
      }
      if (backwards > 0) {
        remarks.add(
            "the time goes back at "
                + backwards
                + (backwards == 1 ? " entry" : " entries")
                + ": a clock was wrong, or several clocks differ");
      }
      if (!runAgain) {
        remarks.add("no recommendation was run again, as was asked");
      }
    }
  }
}
