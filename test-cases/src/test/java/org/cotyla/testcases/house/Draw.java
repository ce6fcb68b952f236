package org.cotyla.testcases.house;

import java.util.List;
import java.util.Random;

/** Repeatable draws from a seed. Not thread-safe. */
public final class Draw {

  private final Random random;

  public Draw(long seed) {
    this.random = new Random(seed);
  }

  /** True in so many of a hundred draws. */
  public boolean percent(int share) {
    return random.nextInt(100) < share;
  }

  /** A whole number between two, both included. */
  public int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  /** About the mean, with the given spread, and never outside the ends. */
  public int around(int mean, int spread, int least, int most) {
    long drawn = Math.round(mean + spread * random.nextGaussian());
    return (int) Math.max(least, Math.min(most, drawn));
  }

  public <T> T oneOf(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }

  @SafeVarargs
  public final <T> T oneOf(T... values) {
    return values[random.nextInt(values.length)];
  }

  /** The first value in so many of a hundred draws, otherwise the second. */
  public <T> T mostly(int share, T first, T second) {
    return percent(share) ? first : second;
  }
}
