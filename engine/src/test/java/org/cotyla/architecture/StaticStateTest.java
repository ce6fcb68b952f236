package org.cotyla.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class StaticStateTest {

  private static List<JavaField> staticFields() {
    List<JavaField> fields = new ArrayList<>();
    for (JavaClass found :
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.cotyla")) {
      found.getFields().stream()
          .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
          .filter(field -> !field.getModifiers().contains(JavaModifier.SYNTHETIC))
          .forEach(fields::add);
    }
    return fields;
  }

  @Test
  @DisplayName("Every static field is final")
  void staticFieldsAreFinal() {
    assertThat(staticFields())
        .isNotEmpty()
        .allMatch(field -> field.getModifiers().contains(JavaModifier.FINAL));
  }

  @Test
  @DisplayName("Every static list, set or map refuses to be changed, and no array is static")
  void staticCollectionsAreFixed() throws ReflectiveOperationException {
    int seen = 0;
    for (JavaField found : staticFields()) {
      boolean holder =
          found.getRawType().isAssignableTo(Collection.class)
              || found.getRawType().isAssignableTo(Map.class);
      assertThat(found.getRawType().isArray() && !found.getName().startsWith("$"))
          .as(found.getFullName())
          .isFalse();
      if (holder) {
        Field field = found.reflect();
        field.setAccessible(true);
        seen++;
        assertThat(field.get(null).getClass().getName())
            .as(found.getFullName())
            .matches("java\\.util\\.(ImmutableCollections|Collections\\$(Unmodifiable|Empty)).*");
      }
    }
    assertThat(seen).isPositive();
  }
}
