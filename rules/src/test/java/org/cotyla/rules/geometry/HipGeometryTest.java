package org.cotyla.rules.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import org.cotyla.expression.CellParser;
import org.cotyla.expression.Dialect;
import org.cotyla.expression.ExpressionException;
import org.cotyla.expression.FormulaFunction;
import org.cotyla.expression.FormulaLibrary;
import org.cotyla.expression.Scope;
import org.cotyla.expression.StandardFunctions;
import org.cotyla.expression.Vocabulary;
import org.cotyla.name.Names;
import org.cotyla.value.PossibleValues;
import org.cotyla.value.ValueType;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The library of hip geometry")
class HipGeometryTest {

  @Test
  @DisplayName("A host finds it as a service")
  void isAService() {
    assertThat(ServiceLoader.load(FormulaLibrary.class))
        .hasAtLeastOneElementOfType(HipGeometry.class);
  }

  @Test
  @DisplayName("Every function has a name of its own, and none hides a standard one")
  void namesAreUnique() {
    List<String> keys =
        Geometry.functions().stream().map(FormulaFunction::name).map(Names::key).toList();
    assertThat(keys).hasSize(25).doesNotHaveDuplicates();
    assertThat(StandardFunctions.all())
        .extracting(function -> Names.key(function.name()))
        .doesNotContainAnyElementsOf(keys);
  }

  @Test
  @DisplayName("A formula calls each by its name, in any spelling of spaces and capitals")
  void callable() throws ExpressionException {
    CellParser parser =
        new CellParser(new Vocabulary(List.of(), Geometry.functions()), Dialect.KIND);
    for (FormulaFunction function : Geometry.functions()) {
      int count = function.parameters().size();
      String arguments = String.join(", ", Collections.nCopies(count, "10"));
      String spelled = function.name().toUpperCase(Locale.ROOT).replace(' ', '_');
      PossibleValues called =
          parser.formula(spelled + "(" + arguments + ")").evaluate(Scope.empty());
      List<PossibleValues> tens = Collections.nCopies(count, Geometry.certain(10));
      assertThat(called).as(function.name()).isEqualTo(function.apply(tens));
    }
  }

  @Test
  @DisplayName("An argument that is nothing gives nothing")
  void nothingGivesNothing() {
    PossibleValues nothing = PossibleValues.nothing(ValueType.NUMBER);
    for (FormulaFunction function : Geometry.functions()) {
      int count = function.parameters().size();
      assertThat(function.apply(Collections.nCopies(count, nothing)).isNothing())
          .as(function.name())
          .isTrue();
    }
  }

  @Test
  @DisplayName("It reckons with StrictMath alone, so every machine gives the same digits")
  void sameDigitsEverywhere() {
    JavaClasses geometry =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.cotyla.rules.geometry");
    assertThat(geometry).isNotEmpty();
    ArchRuleDefinition.noClasses()
        .should()
        .dependOnClassesThat()
        .areAssignableTo(Math.class)
        .check(geometry);
  }
}
