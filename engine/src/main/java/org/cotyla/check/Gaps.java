package org.cotyla.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.finite.Answer;
import org.cotyla.finite.Claim;
import org.cotyla.finite.Region;
import org.cotyla.protocol.HitPolicy;

/** Cases for which a table has no row, though its result is one value that others read or show. */
final class Gaps {

  private static final int REGIONS_AT_MOST = 5;

  private final TableCheck check;

  Gaps(TableCheck check) {
    this.check = check;
  }

  /** A table that votes or lists may well have nothing to say, and a count of none is 0. */
  private boolean mayBeSilent() {
    HitPolicy policy = check.table().hitPolicy();
    return check.table().votes()
        || check.table().otherwise().isPresent()
        || policy.isList()
        || policy == HitPolicy.COUNT;
  }

  void check() {
    if (mayBeSilent()) {
      return;
    }
    Claim none = new Claim.NoRow(check.table());
    List<Claim> claims = new ArrayList<>(List.of(none));
    for (int i = 0; ; i++) {
      Claim claim = new Claim.All(claims);
      Answer answer = check.search().findEarliest(claim);
      if (answer instanceof Answer.Impossible) {
        return;
      }
      if (i == REGIONS_AT_MOST) {
        check
            .remarks()
            .note(
                "K103",
                check.table().at(),
                check.table().name(),
                "more cases may have no row; only the first "
                    + REGIONS_AT_MOST
                    + " regions are shown");
        return;
      }
      if (answer instanceof Answer.Undecided undecided) {
        check
            .remarks()
            .warning(
                "K102",
                check.table().at(),
                check.table().name(),
                "whether some case meets no row is undecided: " + undecided.why(),
                Optional.empty(),
                Remarks.Example.none());
        return;
      }
      Answer.Found found = (Answer.Found) answer;
      Region around = check.classes().around(found.answers().get(0));
      boolean proven = isFree(around);
      Region region = proven ? check.classes().widest(around, this::isFree) : around;
      report(region, proven, check.search().smallest(found, claim));
      claims.add(new Claim.Not(region.claim()));
    }
  }

  /** Whether the cells alone say that no row matches any case of the region. */
  private boolean isFree(Region region) {
    return check.table().rows().stream().allMatch(row -> check.classes().isOutside(row, region));
  }

  /** What hangs on other names than the inputs is a gap in some cases of the region only. */
  private void report(Region region, boolean proven, Answer.Found example) {
    check
        .remarks()
        .warning(
            "K101",
            check.table().at(),
            check.table().name(),
            "no row for " + (proven ? "" : "some cases of ") + check.words().plain(region),
            Optional.of("add a row for it, or a default row; until then the result is nothing"),
            Remarks.Example.of(example.answers().get(0)));
  }
}
