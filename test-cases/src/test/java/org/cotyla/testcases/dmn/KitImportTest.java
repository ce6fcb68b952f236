package org.cotyla.testcases.dmn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cotyla.dmn.DmnImport;
import org.cotyla.issue.Issue;
import org.cotyla.issue.RejectedException;
import org.cotyla.issue.Severity;
import org.cotyla.workbook.ProtocolWorkbookWriter;
import org.cotyla.workbook.Workbooks;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Models of the DMN Technology Compatibility Kit (https://github.com/dmn-tck/tck). */
@DisplayName("A model of the compatibility kit, brought in as a workbook,")
class KitImportTest {

  /** What a DMN file does not say and a protocol must: reasons, sources, meanings, questions. */
  private static final Set<String> NOT_SAID = Set.of("W101", "W120", "W121", "W123", "W151");

  private static List<Path> models() throws IOException {
    String named = System.getProperty("cotyla.tck", "");
    Path checkout = Path.of(System.getProperty("cotyla.home", "."));
    Path kit = named.isBlank() ? checkout.resolve("../shared/tck") : Path.of(named);
    assumeTrue(Files.isDirectory(kit), "the conformance data is not here");
    try (Stream<Path> files = Files.walk(kit)) {
      return files.filter(file -> file.toString().endsWith(".dmn")).sorted().toList();
    }
  }

  @Test
  @DisplayName("lacks only what its file does not say, unless a cell was remarked on")
  void lacksOnlyWhatIsNotSaid() throws IOException {
    List<String> tables = new ArrayList<>();
    for (Path file : models()) {
      try {
        DmnImport brought = DmnImport.read(file.toString(), Files.readAllBytes(file));
        brought.draft().decisions().forEach(decision -> tables.add(decision.name().text()));
        boolean hasUnheldCells =
            brought.remarks().stream().anyMatch(issue -> issue.message().contains("cannot hold"));
        if (!hasUnheldCells) {
          assertThat(codes(brought)).as(file.toString()).isSubsetOf(NOT_SAID);
        }
      } catch (RejectedException noTable) {
        assertThat(noTable).as(file.toString()).hasMessageContaining("D003");
      }
    }
    assertThat(tables).hasSizeGreaterThanOrEqualTo(25);
  }

  private static Set<String> codes(DmnImport brought) {
    byte[] workbook = ProtocolWorkbookWriter.write(brought.draft());
    try {
      Workbooks.read("kit.xlsx", workbook, List.of());
      return Set.of();
    } catch (RejectedException lacking) {
      return lacking.issues().stream()
          .filter(issue -> issue.severity() == Severity.ERROR)
          .map(Issue::code)
          .collect(Collectors.toSet());
    }
  }
}
