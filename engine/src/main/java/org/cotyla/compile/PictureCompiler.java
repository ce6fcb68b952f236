package org.cotyla.compile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cotyla.draft.Line;
import org.cotyla.draft.Text;
import org.cotyla.issue.Issues;
import org.cotyla.name.Names;
import org.cotyla.name.NearestWord;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.PictureKind;
import org.cotyla.protocol.PictureRole;

/** The Pictures sheet: what a report draws. Lines with one title make one picture. */
final class PictureCompiler {

  private static final List<String> PAGES = List.of("first", "detail");

  private final PictureParts parts;
  private final Issues issues;

  PictureCompiler(PictureParts parts, Issues issues) {
    this.parts = parts;
    this.issues = issues;
  }

  List<Picture> compile(List<Line> lines) {
    Map<String, List<Line>> byTitle = new LinkedHashMap<>();
    for (Line line : lines) {
      Text title = line.get("picture");
      if (title.isNone()) {
        issues.error("W240", title.at(), "the part names no picture", "write the picture's title");
      } else {
        byTitle.computeIfAbsent(Names.key(title.text()), key -> new ArrayList<>()).add(line);
      }
    }
    return byTitle.values().stream().flatMap(group -> picture(group).stream()).toList();
  }

  private Optional<Picture> picture(List<Line> lines) {
    Text title = lines.get(0).get("picture");
    Optional<PictureKind> kind = kind(lines);
    boolean first = isOnFirstPage(lines);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    List<Part> found = new ArrayList<>();
    lines.forEach(line -> parts.compile(line, kind.get()).ifPresent(found::add));
    // Told once: a role that is misspelt would also be missed.
    if (found.size() == lines.size()) {
      whole(title, kind.get(), found);
    }
    return Optional.of(new Picture(title.text(), kind.get(), first, found, title.at()));
  }

  /** The kind is written on the first line, and may be repeated. */
  private Optional<PictureKind> kind(List<Line> lines) {
    Text first = lines.get(0).get("kind");
    Optional<PictureKind> kind = PictureKind.of(first.text());
    if (kind.isEmpty()) {
      issues.error(
          "W241",
          first.at(),
          "`" + first.text() + "` is not a kind of picture",
          NearestWord.help(first.text(), PictureKind.words()));
    }
    refuseOthers(lines, "kind", first);
    return kind;
  }

  private boolean isOnFirstPage(List<Line> lines) {
    Text page = lines.get(0).get("page");
    boolean known = page.isNone() || PAGES.stream().anyMatch(isSame(page));
    if (!known) {
      issues.error(
          "W242",
          page.at(),
          "`" + page.text() + "` is not a page",
          NearestWord.help(page.text(), PAGES));
    }
    refuseOthers(lines, "page", page);
    return isSame(page).test(PAGES.get(0));
  }

  private void refuseOthers(List<Line> lines, String heading, Text first) {
    for (Line line : lines.subList(1, lines.size())) {
      Text other = line.get(heading);
      if (!other.isNone() && !isSame(first).test(other.text())) {
        issues.error(
            "W243",
            other.at(),
            "`" + other.text() + "` differs from " + first.at().plain(),
            "a picture has one " + heading + "; leave the cell empty or repeat it");
      }
    }
  }

  private static java.util.function.Predicate<String> isSame(Text text) {
    return other -> Names.key(other).equals(Names.key(text.text()));
  }

  private void whole(Text title, PictureKind kind, List<Part> found) {
    for (PictureRole role : kind.roles()) {
      List<Part> of = found.stream().filter(part -> part.role() == role).toList();
      if (of.isEmpty() && role.isRequired()) {
        issues.error(
            "W244",
            title.at(),
            "picture `" + title.text() + "` lacks the role `" + role.word() + "`",
            "a " + kind.word() + " has: " + words(kind.roles()));
      }
      if (of.size() > 1 && !role.mayRepeat()) {
        issues.error(
            "W245",
            of.get(1).at(),
            "the role `" + role.word() + "` stands twice; the other is at " + of.get(0).at());
      }
    }
    zones(found);
  }

  /** The sides of one zone have one label. */
  private void zones(List<Part> found) {
    Map<String, List<Part>> zones = new LinkedHashMap<>();
    found.stream()
        .filter(part -> PictureRole.zoneSides().contains(part.role()))
        .forEach(
            part ->
                zones.computeIfAbsent(Names.key(part.label()), key -> new ArrayList<>()).add(part));
    for (List<Part> sides : zones.values()) {
      List<PictureRole> roles = sides.stream().map(Part::role).sorted().toList();
      if (!roles.equals(PictureRole.zoneSides())) {
        issues.error(
            "W246",
            sides.get(0).at(),
            "the zone `" + sides.get(0).label() + "` has not one of each side: " + words(roles),
            "a zone has, with one label: " + words(PictureRole.zoneSides()));
      }
    }
  }

  static String words(List<PictureRole> roles) {
    return String.join(", ", roles.stream().map(PictureRole::word).toList());
  }
}
