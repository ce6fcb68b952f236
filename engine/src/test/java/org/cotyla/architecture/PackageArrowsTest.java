package org.cotyla.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Who may know whom. A new package must be given its place here. */
class PackageArrowsTest {

  private static final String ROOT = "org.cotyla.";

  private static final Map<String, Set<String>> MAY_KNOW =
      Map.ofEntries(
          Map.entry("value", Set.of()),
          Map.entry("issue", Set.of()),
          Map.entry("name", Set.of()),
          Map.entry("unit", Set.of("value")),
          Map.entry("expression", Set.of("value", "name")),
          Map.entry("draft", Set.of("issue")),
          Map.entry("protocol", Set.of("expression", "issue", "value", "name")),
          Map.entry(
              "compile",
              Set.of("draft", "protocol", "expression", "unit", "issue", "value", "name")),
          Map.entry(
              "workbook",
              Set.of("compile", "draft", "protocol", "expression", "issue", "value", "name")),
          Map.entry("finding", Set.of("protocol", "unit", "expression", "issue", "value", "name")),
          Map.entry("dmn", Set.of("draft", "protocol", "expression", "issue", "value", "name")),
          Map.entry("firing", Set.of("protocol", "expression", "issue", "value")),
          Map.entry("identity", Set.of("protocol", "finding", "expression", "issue", "value")),
          Map.entry(
              "evaluate",
              Set.of(
                  "firing",
                  "finding",
                  "identity",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name")),
          Map.entry(
              "caseform",
              Set.of("workbook", "finding", "draft", "protocol", "expression", "issue", "value")),
          Map.entry(
              "explain",
              Set.of("evaluate", "finding", "protocol", "expression", "issue", "value", "name")),
          Map.entry(
              "finite", Set.of("evaluate", "finding", "protocol", "expression", "value", "name")),
          Map.entry(
              "check",
              Set.of(
                  "finite",
                  "evaluate",
                  "finding",
                  "identity",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name")),
          Map.entry(
              "authoring",
              Set.of(
                  "caseform",
                  "workbook",
                  "identity",
                  "draft",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name",
                  "audit")),
          Map.entry(
              "trial",
              Set.of("evaluate", "finding", "identity", "protocol", "issue", "value", "name")),
          Map.entry(
              "ledger",
              Set.of(
                  "privacy",
                  "json",
                  "explain",
                  "evaluate",
                  "workbook",
                  "finding",
                  "identity",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name")),
          Map.entry(
              "compare",
              Set.of(
                  "finite",
                  "evaluate",
                  "finding",
                  "identity",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name")),
          Map.entry("library", Set.of("compare", "json", "finding", "protocol", "issue", "name")),
          Map.entry(
              "explore",
              Set.of(
                  "finite",
                  "evaluate",
                  "finding",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name")),
          Map.entry("audit", Set.of("ledger", "evaluate", "protocol", "value", "name")),
          Map.entry("ledgeraudit", Set.of("audit", "ledger", "evaluate", "protocol")),
          Map.entry("privacy", Set.of("issue")),
          Map.entry(
              "retrospective",
              Set.of(
                  "privacy",
                  "audit",
                  "evaluate",
                  "workbook",
                  "finding",
                  "identity",
                  "protocol",
                  "expression",
                  "unit",
                  "issue",
                  "value",
                  "name")),
          Map.entry(
              "json",
              Set.of(
                  "check",
                  "explain",
                  "evaluate",
                  "finding",
                  "identity",
                  "protocol",
                  "expression",
                  "issue",
                  "value",
                  "name",
                  "trial",
                  "compare",
                  "finite",
                  "explore",
                  "audit",
                  "retrospective")));

  private static final Map<String, Set<String>> LIBRARY_SEEN_BY =
      Map.ofEntries(
          Map.entry("org.apache.poi", Set.of("workbook", "caseform", "authoring")),
          Map.entry("org.apache.xmlbeans", Set.of("workbook", "authoring")),
          Map.entry("org.apache.commons.compress", Set.of("workbook")),
          Map.entry("org.drools", Set.of("firing")),
          Map.entry("org.kie", Set.of("firing")),
          Map.entry("com.fasterxml.jackson", Set.of("json", "identity", "ledger")),
          Map.entry("org.erdtman", Set.of("json", "identity")),
          Map.entry("org.fhir", Set.of("unit")),
          Map.entry("org.sat4j", Set.of("finite")),
          Map.entry("org.apache.commons.text", Set.of("name")),
          Map.entry("org.flywaydb", Set.of("ledger")),
          Map.entry("org.apache.commons.csv", Set.of("library", "retrospective")),
          Map.entry("org.apache.commons.statistics", Set.of("audit")));

  private final JavaClasses engine =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.cotyla");

  private static String packageOf(JavaClass found) {
    String rest = found.getPackageName().substring(ROOT.length());
    return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
  }

  @Test
  @DisplayName("Every package of the engine has its place in the order")
  void everyPackageIsPlaced() {
    Set<String> found = new TreeSet<>();
    engine.forEach(javaClass -> found.add(packageOf(javaClass)));
    assertThat(found).containsExactlyInAnyOrderElementsOf(MAY_KNOW.keySet());
  }

  @Test
  @DisplayName("Packages know only those below them")
  void arrowsPointDown() {
    MAY_KNOW.forEach(
        (from, allowed) ->
            noClasses()
                .that()
                .resideInAPackage(ROOT + from + "..")
                .should()
                .dependOnClassesThat(
                    DescribedPredicate.describe(
                        "another package of the engine than " + allowed,
                        target ->
                            target.getPackageName().startsWith(ROOT)
                                && !packageOf(target).equals(from)
                                && !allowed.contains(packageOf(target))))
                .check(engine));
  }

  @Test
  @DisplayName("No packages go in a circle")
  void noCycles() {
    slices().matching("org.cotyla.(*)..").should().beFreeOfCycles().check(engine);
  }

  @Test
  @DisplayName("Each library is seen by the packages that hide it, and by no other")
  void librariesAreFenced() {
    LIBRARY_SEEN_BY.forEach(
        (library, seenBy) ->
            noClasses()
                .that(
                    DescribedPredicate.describe(
                        "are outside " + seenBy, seen -> !seenBy.contains(packageOf(seen))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .check(engine));
  }

  @Test
  @DisplayName("What a host program may call shows no class of a hidden library")
  void librariesAreHidden() {
    for (JavaClass found : engine) {
      found.getMethods().stream()
          .filter(method -> found.getModifiers().contains(JavaModifier.PUBLIC))
          .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
          .forEach(
              method ->
                  assertThat(method.getRawReturnType().getPackageName())
                      .as(method.getFullName())
                      .doesNotStartWith("org.drools")
                      .doesNotStartWith("org.kie")
                      .doesNotStartWith("org.apache")
                      .doesNotStartWith("com.fasterxml"));
    }
  }

  @Test
  @DisplayName("The engine prints nothing and ends no program")
  void noPrinting() {
    noClasses()
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(Throwable.class, "printStackTrace")
        .check(engine);
  }
}
