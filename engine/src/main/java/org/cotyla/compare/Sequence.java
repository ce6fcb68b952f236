package org.cotyla.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.cotyla.name.Names;

/** Which things of a list stand in another order than before. */
final class Sequence {

  private Sequence() {}

  /** The fewest things that must have been moved, by the new order; new things are not moved. */
  static <T> List<T> moved(List<T> before, List<T> after, Function<T, String> name) {
    Map<String, Integer> places = new HashMap<>();
    before.forEach(thing -> places.put(Names.key(name.apply(thing)), places.size()));
    List<T> kept =
        after.stream().filter(thing -> places.containsKey(Names.key(name.apply(thing)))).toList();
    int[] was =
        kept.stream()
            .mapToInt(thing -> places.getOrDefault(Names.key(name.apply(thing)), 0))
            .toArray();
    boolean[] stays = longestRise(was);
    List<T> moved = new ArrayList<>();
    for (int i = 0; i < was.length; i++) {
      if (!stays[i]) {
        moved.add(kept.get(i));
      }
    }
    return moved;
  }

  /** Marks one longest rising part of the numbers. */
  private static boolean[] longestRise(int[] numbers) {
    int[] ends = new int[numbers.length];
    int[] previous = new int[numbers.length];
    int longest = 0;
    for (int i = 0; i < numbers.length; i++) {
      int low = 0;
      int high = longest;
      while (low < high) {
        int middle = (low + high) / 2;
        if (numbers[ends[middle]] < numbers[i]) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      previous[i] = low == 0 ? -1 : ends[low - 1];
      ends[low] = i;
      longest = Math.max(longest, low + 1);
    }
    boolean[] marks = new boolean[numbers.length];
    Arrays.fill(marks, false);
    for (int i = longest == 0 ? -1 : ends[longest - 1]; i >= 0; i = previous[i]) {
      marks[i] = true;
    }
    return marks;
  }
}
