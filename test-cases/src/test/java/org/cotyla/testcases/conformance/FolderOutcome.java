package org.cotyla.testcases.conformance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What became of the results that a folder of the TCK expects.
 *
 * @param folder the folder's name
 * @param passed how many are as expected
 * @param beyond by reason, those that lie beyond what the engine sets out to do
 * @param wrong those that are wrong or cannot be explained
 */
record FolderOutcome(
    String folder, int passed, Map<String, List<String>> beyond, List<String> wrong) {

  static FolderOutcome of(String folder, TckTests tests) {
    ModelRun model = new ModelRun(tests.model());
    int passed = 0;
    Map<String, List<String>> beyond = new TreeMap<>();
    List<String> wrong = new ArrayList<>();
    for (TckTests.Result result : tests.results()) {
      try {
        FeelValue value = model.decide(result.decision(), result.inputs());
        Optional<String> difference = OutOfScope.difference(result.title());
        if (value.meets(result.expected())) {
          passed++;
        } else if (difference.isPresent()) {
          add(beyond, difference.get(), result);
        } else {
          wrong.add(result.title() + ": " + value + " instead of " + result.expected());
        }
      } catch (OutOfScopeException outside) {
        add(beyond, String.valueOf(outside.getMessage()), result);
      } catch (IllegalStateException failed) {
        wrong.add(result.title() + ": " + failed.getMessage());
      }
    }
    return new FolderOutcome(folder, passed, beyond, wrong);
  }

  private static void add(Map<String, List<String>> beyond, String reason, TckTests.Result result) {
    beyond.computeIfAbsent(reason, r -> new ArrayList<>()).add(result.title());
  }

  int outside() {
    return beyond.values().stream().mapToInt(List::size).sum();
  }

  int total() {
    return passed + outside() + wrong.size();
  }

  /** The results beyond scope, without the test cases they are in. */
  List<String> decisionsOutside() {
    return beyond.values().stream()
        .flatMap(List::stream)
        .map(title -> title.replaceFirst(".*/", ""))
        .distinct()
        .sorted()
        .toList();
  }
}
