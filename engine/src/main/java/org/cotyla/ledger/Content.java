package org.cotyla.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cotyla.protocol.Counts;

/** What an entry records. All of it is data: nothing here is worked out when it is read. */
public sealed interface Content {

  Kind kind();

  /** The local reference of the case that it is about, when it is about one. */
  default Optional<String> aboutCase() {
    return Optional.empty();
  }

  /** What is about a case. */
  sealed interface OfCase extends Content {

    String caseReference();

    @Override
    default Optional<String> aboutCase() {
      return Optional.of(caseReference());
    }
  }

  /**
   * The ledger's beginning.
   *
   * @param ledger a random name of this ledger, which every signature in it repeats
   * @param format the version of the layout of entries
   * @param keys the first keys, which vouch for all later ones
   */
  record Founding(String ledger, int format, List<PublicKeyOf> keys) implements Content {
    public Founding {
      keys = List.copyOf(keys);
    }

    @Override
    public Kind kind() {
      return Kind.FOUNDING;
    }
  }

  /** One holder of a key vouches for a further key; it counts when two have. */
  record KeyVoucher(PublicKeyOf key, Signature signature) implements Content {
    @Override
    public Kind kind() {
      return Kind.KEY;
    }
  }

  /** A key counts no more for what comes after. */
  record KeyWithdrawal(String key, String reason, Signature signature) implements Content {
    @Override
    public Kind kind() {
      return Kind.KEY_WITHDRAWAL;
    }
  }

  /** A role approves a protocol; the workbook is kept whole. */
  record Approval(ProtocolVersion protocol, Signature signature) implements Content {
    @Override
    public Kind kind() {
      return Kind.APPROVAL;
    }
  }

  /**
   * A protocol has its approvals.
   *
   * @param approvals the sequence numbers of the approvals
   */
  record Release(ProtocolVersion protocol, List<Long> approvals) implements Content {
    public Release {
      approvals = List.copyOf(approvals);
    }

    @Override
    public Kind kind() {
      return Kind.RELEASE;
    }
  }

  /**
   * A protocol is taken out of force.
   *
   * @param release the sequence number of its release
   * @param day the local day from which it is not to be used
   * @param reason why, in free words
   */
  record Withdrawal(
      long release, LocalDate day, ProtocolVersion protocol, String reason, Signature signature)
      implements Content {
    @Override
    public Kind kind() {
      return Kind.WITHDRAWAL;
    }
  }

  /**
   * A case was run.
   *
   * @param caseReference the local reference of the case
   * @param day the local day on which it was run
   * @param stage the stage of the case
   * @param protocol the workbook that it was run with
   * @param life where that protocol was in its life on that day, by this ledger
   * @param reviewOverdue whether its review was due before that day
   * @param engineVersion the engine's version
   * @param caseDigest SHA-256 over the canonical case
   * @param findings the case as canonical JSON, every value as text in its field's unit
   * @param recommendation the digest of the whole recommendation as JSON, which is kept
   * @param advice the recommendation in short, for questions; it follows from the whole
   * @param plan the entry of the plan that this runs again, when it does
   */
  record Recommendation(
      String caseReference,
      LocalDate day,
      String stage,
      ProtocolVersion protocol,
      Life life,
      boolean reviewOverdue,
      String engineVersion,
      String caseDigest,
      String findings,
      String recommendation,
      Advice advice,
      Optional<Long> plan)
      implements OfCase {
    @Override
    public Kind kind() {
      return Kind.RECOMMENDATION;
    }
  }

  /**
   * What was done.
   *
   * @param recommendation the entry of the recommendation that was there
   * @param day the local day on which it was done
   * @param role the role of who decided
   * @param choices what was chosen in each ranking
   * @param followed whether every choice is one that stood first
   * @param reason why it departs, a word of the protocol's list
   * @param because why it departs, in free words
   */
  record Decision(
      String caseReference,
      long recommendation,
      LocalDate day,
      String role,
      List<Choice> choices,
      boolean followed,
      Optional<String> reason,
      Optional<String> because)
      implements OfCase {
    public Decision {
      choices = List.copyOf(choices);
    }

    @Override
    public Kind kind() {
      return Kind.DECISION;
    }
  }

  /**
   * What came of a decision.
   *
   * @param decision the entry of the decision
   * @param day the local day of it
   * @param outcome a word of the protocol's list
   * @param counts whether it is an event or the end of what is known
   * @param role the role of who reports it
   */
  record Outcome(
      String caseReference,
      long decision,
      LocalDate day,
      String outcome,
      Counts counts,
      String role)
      implements OfCase {
    @Override
    public Kind kind() {
      return Kind.OUTCOME;
    }
  }

  /**
   * The state of the ledger at an entry, signed.
   *
   * @param sequence the entry's number
   * @param digest its digest
   */
  record Checkpoint(long sequence, String digest, Signature signature) implements Content {
    @Override
    public Kind kind() {
      return Kind.CHECKPOINT;
    }
  }
}
