package org.cotyla.testcases.generated;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.cotyla.finding.Case;
import org.cotyla.finding.Given;
import org.cotyla.protocol.Field;
import org.cotyla.protocol.Protocol;
import org.cotyla.value.ValueType;

/** Random cases of generated protocols: complete, or with data missing or only partly known. */
public final class RandomCases {

  private RandomCases() {}

  /**
   * A case.
   *
   * @param open how often of ten a datum is left out or stated partly
   */
  public static Case of(Protocol protocol, Random random, int open) {
    int stage = random.nextInt(2);
    Map<String, Object> findings = new LinkedHashMap<>();
    for (Field field : protocol.givenFields()) {
      if (field.stage() <= stage) {
        boolean isOpen = random.nextInt(10) < open;
        if (!isOpen) {
          findings.put(field.name(), value(field, random));
        } else if (random.nextInt(3) == 0) {
          findings.put(field.name(), partly(field, random));
        }
      }
    }
    return Case.of(findings).atStage(protocol.about().stages().get(stage));
  }

  /** Values that the cells of generated protocols can tell apart, as they are given in a case. */
  public static List<Given> representatives(Field field) {
    List<Given> values = new ArrayList<>();
    switch (field.symbol().type()) {
      case NUMBER -> {
        for (int i = 0; i <= 6; i++) {
          values.add(Given.of(BigDecimal.valueOf(i)));
        }
        values.add(Given.of(new BigDecimal("2.5")));
      }
      case YES_NO -> values.addAll(List.of(Given.of(true), Given.of(false)));
      case DATE -> {
        for (int day = 1; day <= 6; day++) {
          values.add(Given.of(LocalDate.of(2026, 1, day)));
        }
      }
      case TEXT -> {
        List<String> free = List.of("alpha", "beta gamma", "anything else");
        List<String> words = field.symbol().isChoice() ? field.symbol().choices() : free;
        words.forEach(word -> values.add(Given.of(word)));
      }
    }
    return values;
  }

  private static Given value(Field field, Random random) {
    List<Given> values = representatives(field);
    return values.get(random.nextInt(values.size()));
  }

  private static Given partly(Field field, Random random) {
    if (field.symbol().type() == ValueType.NUMBER && random.nextBoolean()) {
      int low = random.nextInt(6);
      int high = low + 1 + random.nextInt(6 - low);
      return Given.between(BigDecimal.valueOf(low), BigDecimal.valueOf(high));
    }
    return new Given.OneOf(List.of(value(field, random), value(field, random)));
  }
}
