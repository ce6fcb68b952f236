package org.cotyla.dmn;

import java.util.List;
import java.util.Set;
import org.cotyla.draft.ProtocolDraft;
import org.cotyla.issue.Issue;
import org.cotyla.issue.Issues;
import org.cotyla.issue.Place;
import org.cotyla.issue.RejectedException;

/**
 * What a DMN file gives for a workbook: its decision tables, its input data, the formulas that a
 * workbook can hold; and what it holds besides, by name, so that nothing is dropped in silence.
 *
 * @param draft the workbook's text; what the file does not say stays blank
 * @param remarks what could not be brought in, and why
 */
public record DmnImport(ProtocolDraft draft, List<Issue> remarks) {

  /** The size beyond which a file is refused. */
  public static final int MOST_BYTES = XmlInput.FILE_BYTES;

  private static final Set<String> MODELS =
      Set.of(
          "http://www.omg.org/spec/DMN/20151101/dmn.xsd",
          "http://www.omg.org/spec/DMN/20180521/MODEL/",
          "https://www.omg.org/spec/DMN/20191111/MODEL/",
          "https://www.omg.org/spec/DMN/20211108/MODEL/",
          "https://www.omg.org/spec/DMN/20230324/MODEL/");

  public DmnImport {
    remarks = List.copyOf(remarks);
  }

  /**
   * Reads a DMN file of version 1.1 to 1.5, which is untrusted.
   *
   * @param name what to call the file in messages
   * @throws RejectedException when it is no such file, or nothing in it can be brought in
   */
  public static DmnImport read(String name, byte[] file) {
    XmlElement root = XmlInput.read(name, file);
    Issues issues = new Issues();
    if (!root.name().equals("definitions") || !MODELS.contains(root.namespace())) {
      issues.error(
          "D002",
          new Place.Whole(name),
          "this is not a DMN model: its first element is `" + root.name() + "`",
          "expected `definitions` of DMN 1.1, 1.2, 1.3, 1.4 or 1.5");
      throw new RejectedException(issues.list());
    }
    ProtocolDraft draft = new ImportedModel(name, root, issues).draft();
    if (draft.decisions().isEmpty()) {
      issues.error(
          "D003", new Place.Whole(name), "the model has no decision table that can be brought in");
      throw new RejectedException(issues.list());
    }
    return new DmnImport(draft, issues.list());
  }
}
