package org.cotyla.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.compare.Difference.Kind;
import org.cotyla.evaluate.Recommendation;
import org.cotyla.finite.Claim;
import org.cotyla.value.Truth;

/**
 * A result that is one of several things, exactly one of them in each case.
 *
 * @param about the output, when there are several
 * @param before each thing that the old protocol can give, and when it does
 * @param after each thing that the new protocol can give, and when it does
 */
record TokenAspect(String about, Map<String, Claim> before, Map<String, Claim> after)
    implements Aspect {

  private static final Claim NEVER = new Claim.Any(List.of());

  TokenAspect {
    before = new LinkedHashMap<>(before);
    after = new LinkedHashMap<>(after);
  }

  @Override
  public Claim differs() {
    List<Claim> any = new ArrayList<>();
    before.forEach(
        (token, claim) -> {
          Claim same = after.getOrDefault(token, NEVER);
          any.add(new Claim.All(List.of(claim, new Claim.Not(same))));
        });
    return new Claim.Any(any);
  }

  @Override
  public Optional<Difference> difference(List<Recommendation> answers) {
    Optional<String> was = token(before, answers);
    Optional<String> now = token(after, answers);
    if (was.isEmpty() || now.isEmpty() || was.equals(now)) {
      return Optional.empty();
    }
    Claim claim =
        new Claim.All(
            List.of(before.getOrDefault(was.get(), NEVER), after.getOrDefault(now.get(), NEVER)));
    return Optional.of(new Difference(claim, Kind.RESULT, about, was, now));
  }

  private static Optional<String> token(Map<String, Claim> tokens, List<Recommendation> answers) {
    return tokens.entrySet().stream()
        .filter(entry -> entry.getValue().truth(answers) == Truth.TRUE)
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
