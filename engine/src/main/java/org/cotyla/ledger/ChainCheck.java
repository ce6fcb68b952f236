package org.cotyla.ledger;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cotyla.ledger.Breach.How;

/**
 * Walks the rows of a ledger and says of each whether it is the one that was written there. It
 * looks twice: first which digests there are, so that a break can be named by its cause.
 */
final class ChainCheck {

  private final Ledger ledger;
  private final Map<String, Long> placeOf = new HashMap<>();
  private final Set<String> followed = new HashSet<>();
  private final Set<Long> written = new HashSet<>();
  private long expected = 1;
  private Set<String> last = Set.of(Entry.NONE_BEFORE);
  private boolean lastWasSound = true;

  ChainCheck(Ledger ledger) {
    this.ledger = ledger;
    try (Stream<StoredEntry> rows = ledger.stored()) {
      rows.forEach(
          row -> {
            placeOf.putIfAbsent(row.digest(), row.sequence());
            note(row);
          });
    }
  }

  /** What the body says counts; the columns beside it may have been changed alone. */
  private void note(StoredEntry row) {
    try {
      Entry entry = row.read();
      followed.add(entry.previous());
      written.add(entry.sequence());
    } catch (UnreadableEntryException unreadable) {
      followed.add(row.previous());
      written.add(row.sequence());
    }
  }

  /** Looks at the next row, and gives its entry when it can be read. */
  Optional<Entry> next(StoredEntry row, Consumer<Breach> breaches) {
    if (row.sequence() > expected) {
      String what =
          row.sequence() == expected + 1
              ? "there is no entry " + expected
              : "there are no entries " + expected + " to " + (row.sequence() - 1);
      breaches.accept(new Breach(expected, How.MISSING, what));
    }
    if (row.sequence() < expected) {
      String what =
          row.sequence() < 1 ? "entries have numbers from 1 on" : "its number stands twice";
      breaches.accept(new Breach(row.sequence(), How.INSERTED, what));
    }
    boolean gap = row.sequence() != expected;
    Optional<Entry> entry = read(row, breaches);
    boolean sound = entry.filter(read -> isSound(row, read, gap, breaches)).isPresent();
    expected = row.sequence() + 1;
    // Where one of the two was changed, the next entry still tells which it was.
    last = Set.copyOf(List.of(row.digest(), EntryBody.digest(row.body())));
    lastWasSound = sound;
    return entry;
  }

  private static Optional<Entry> read(StoredEntry row, Consumer<Breach> breaches) {
    try {
      return Optional.of(row.read());
    } catch (UnreadableEntryException unreadable) {
      breaches.accept(new Breach(row.sequence(), How.ALTERED, unreadable.why()));
      return Optional.empty();
    }
  }

  private boolean isSound(
      StoredEntry row, Entry entry, boolean afterGap, Consumer<Breach> breaches) {
    if (!EntryBody.digest(row.body()).equals(row.digest())) {
      breaches.accept(
          new Breach(row.sequence(), How.ALTERED, "its digest is not the digest of what it says"));
      return false;
    }
    if (entry.sequence() != row.sequence()) {
      breaches.accept(misplaced(row, entry));
      return false;
    }
    if (!last.contains(entry.previous()) && !afterGap) {
      breaches.accept(brokenLink(row, entry));
      return false;
    }
    return columnsFit(row, entry, breaches);
  }

  /** The entry was written under another number. */
  private Breach misplaced(StoredEntry row, Entry entry) {
    Long before = placeOf.get(entry.previous());
    if (before != null && before < row.sequence() - 1 && before == entry.sequence() - 1) {
      return new Breach(
          before + 1,
          How.INSERTED,
          "what stands behind it, now entry "
              + row.sequence()
              + ", was written as entry "
              + entry.sequence());
    }
    if (!written.contains(row.sequence())) {
      return new Breach(
          row.sequence(),
          How.MISSING,
          "what stands in its place was written as entry " + entry.sequence());
    }
    return new Breach(
        row.sequence(),
        How.REORDERED,
        "it was written as entry " + entry.sequence() + " and stands in another place");
  }

  /** The entry says that it follows one which is not the one before it. */
  private Breach brokenLink(StoredEntry row, Entry entry) {
    Long place = placeOf.get(entry.previous());
    if (place != null && place < row.sequence() - 1) {
      return new Breach(
          place + 1,
          How.INSERTED,
          "entry " + row.sequence() + " was written to follow entry " + place);
    }
    if (place != null) {
      return new Breach(
          row.sequence(), How.REORDERED, "it was written to follow what is now entry " + place);
    }
    if (lastWasSound && row.sequence() > 1 && last.stream().noneMatch(followed::contains)) {
      return new Breach(
          row.sequence() - 1,
          How.ALTERED,
          "entry "
              + row.sequence()
              + " follows another one than this: it was exchanged with a"
              + " new digest");
    }
    return new Breach(row.sequence(), How.ALTERED, "it says to follow an entry that is not there");
  }

  private static boolean columnsFit(StoredEntry row, Entry entry, Consumer<Breach> breaches) {
    boolean fit =
        row.kind().equals(entry.kind().word())
            && row.previous().equals(entry.previous())
            && row.caseReference().equals(entry.content().aboutCase());
    if (!fit) {
      breaches.accept(
          new Breach(
              row.sequence(),
              How.ALTERED,
              "the columns beside it (kind, case, previous) say other than the entry"));
    }
    return fit;
  }

  /** The number of the last row. */
  long lastSequence() {
    return expected - 1;
  }
}
