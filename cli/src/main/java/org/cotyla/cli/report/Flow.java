package org.cotyla.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cotyla.cli.report.Drawing.Anchor;
import org.cotyla.cli.text.Words;
import org.cotyla.evaluate.DecisionResult;
import org.cotyla.evaluate.Firing;
import org.cotyla.evaluate.Standing;
import org.cotyla.expression.Expression;
import org.cotyla.protocol.Option;
import org.cotyla.protocol.Picture;
import org.cotyla.protocol.Picture.Part;
import org.cotyla.protocol.Picture.Shown;
import org.cotyla.protocol.PictureRole;
import org.cotyla.value.PossibleValues;

/**
 * Plans in order, each in a box, and beside the arrow between two what leads from one to the next.
 */
final class Flow {

  private static final double WIDTH = 328;
  private static final double PAD = 5;
  private static final double LABEL = 52;
  private static final double LINE = 13.125;
  private static final int MOST_TURNS = 6;

  private final Sheet sheet;
  private final Picture picture;

  /** A plan: its label, what it is, and how long it takes to have it. */
  private record Plan(
      String label, List<String> name, List<String> because, String lead, boolean isOpen) {
    double height() {
      return PAD * 2 + 2 + LINE * (name.size() + because.size() + (lead.isEmpty() ? 0 : 1));
    }
  }

  Flow(Sheet sheet, Picture picture) {
    this.sheet = sheet;
    this.picture = picture;
  }

  void draw() {
    List<Plan> plans = plans();
    List<List<String>> turns = new ArrayList<>();
    double height = 4;
    for (int i = 0; i < plans.size(); i++) {
      height += plans.get(i).height();
      if (i + 1 < plans.size()) {
        turns.add(turn(i));
        height += gap(turns.get(i));
      }
    }
    Drawing drawing =
        Drawing.start(
            sheet.markup(), sheet.nextPicture(), WIDTH, height, picture.title(), inWords());
    double y = 2;
    for (int i = 0; i < plans.size(); i++) {
      y = plan(drawing, plans.get(i), y, i == 0);
      if (i + 1 < plans.size()) {
        y = arrow(drawing, turns.get(i), y);
      }
    }
    drawing.end();
  }

  private List<Plan> plans() {
    return picture.parts(PictureRole.PLAN).stream()
        .map(
            part -> {
              PossibleValues value = value(part);
              String name = name(part);
              return new Plan(
                  part.label(),
                  Fit.lines(name, WIDTH - 2 * PAD - LABEL - 8, 12.5, 4),
                  because(part),
                  lead(value),
                  !value.isCertain());
            })
        .toList();
  }

  private PossibleValues value(Part part) {
    Expression formula = PictureValues.formula(part).orElseThrow();
    return formula.evaluate(sheet.scope());
  }

  /** What may be several is counted when there are many. */
  private String name(Part part) {
    PossibleValues value = value(part);
    if (value.isNothing()) {
      return "none";
    }
    int possible = value.values().isFinite() ? value.values().values().size() : 0;
    return possible > 3
        ? "open: one of " + possible + (value.orNothing() ? ", or none" : "")
        : sheet.inWords(PictureValues.formula(part).orElseThrow());
  }

  /** The reason of the one row that gives the plan; what comes first is explained elsewhere. */
  private List<String> because(Part part) {
    if (!(PictureValues.formula(part).orElseThrow() instanceof Expression.Reference name)) {
      return List.of();
    }
    return sheet.advice().decisions().stream()
        .filter(result -> result.table().gives().contains(name.symbol()) && result.isCertain())
        .map(DecisionResult::counting)
        .filter(rows -> rows.size() == 1)
        .map(rows -> rows.get(0).row())
        .findFirst()
        .map(
            row ->
                Fit.lines(
                    row.because() + " [" + row.id() + "]",
                    WIDTH - 2 * PAD - LABEL,
                    Drawing.SMALL,
                    4))
        .orElse(List.of());
  }

  private String lead(PossibleValues value) {
    Optional<Option> option =
        value
            .single()
            .flatMap(
                one ->
                    sheet.advice().protocol().rankings().stream()
                        .flatMap(ranking -> ranking.options().stream())
                        .filter(known -> known.name().equals(one.plain()))
                        .findFirst());
    return option
        .filter(known -> known.leadTimeDays().isPresent())
        .map(known -> "lead time " + Words.count(known.leadTimeDays().getAsInt(), "day"))
        .orElse(option.isPresent() ? "no lead time stated" : "");
  }

  /** The lines beside the arrow after the plan of that number. */
  private List<String> turn(int number) {
    List<Part> parts = picture.parts(PictureRole.TURN);
    List<String> lines = new ArrayList<>();
    if (number < parts.size()) {
      List<Firing> rows = rows(parts.get(number), Standing.DECIDES);
      int open = rows(parts.get(number), Standing.MAY_DECIDE).size();
      String label = parts.get(number).label();
      if (!label.isEmpty() && rows.size() + open > 0) {
        lines.add(label + ":");
      }
      for (Firing row : rows.subList(0, Math.min(MOST_TURNS, rows.size()))) {
        List<String> text = Fit.lines(result(row), WIDTH - 52, Drawing.SMALL);
        for (int i = 0; i < text.size(); i++) {
          lines.add((i == 0 ? "– " : "   ") + text.get(i));
        }
      }
      if (rows.size() > MOST_TURNS) {
        lines.add("and " + (rows.size() - MOST_TURNS) + " more, see the lists");
      }
      if (open > 0) {
        lines.add("and " + open + " that hang on open findings");
      }
    }
    return lines;
  }

  private List<Firing> rows(Part part, Standing standing) {
    String decision = ((Shown.Listed) part.shows()).decision().name();
    return sheet.advice().decision(decision).stream()
        .map(DecisionResult::firings)
        .flatMap(List::stream)
        .filter(row -> row.standing() == standing)
        .toList();
  }

  private static String result(Firing row) {
    return Words.values(row.results().get(0), row.table().outputs().get(0).symbol());
  }

  private static double gap(List<String> turn) {
    return Math.max(15, turn.size() * LINE + 9);
  }

  private double plan(Drawing drawing, Plan plan, double y, boolean isFirst) {
    double height = plan.height();
    drawing.box(
        1,
        y,
        WIDTH - 2,
        height,
        isFirst ? Palette.OPEN : Palette.PAPER,
        isFirst ? Palette.ACCENT : Palette.LINE,
        isFirst ? 2 : 1.2,
        plan.isOpen());
    double base = y + PAD + 9;
    List<String> label = Fit.lines(plan.label(), LABEL - 4, Drawing.SMALL, 2);
    drawing.lines(PAD, base, label, Drawing.SMALL, Palette.QUIET, Anchor.START);
    for (String line : plan.name()) {
      drawing.bold(PAD + LABEL, base, line, 12.5, Palette.INK, Anchor.START);
      base += LINE;
    }
    base =
        drawing.lines(PAD + LABEL, base, plan.because(), Drawing.SMALL, Palette.INK, Anchor.START);
    if (!plan.lead().isEmpty()) {
      drawing.text(PAD + LABEL, base + 1, plan.lead(), Drawing.SMALL, Palette.QUIET, Anchor.START);
    }
    return y + height;
  }

  private static double arrow(Drawing drawing, List<String> turn, double y) {
    double end = y + gap(turn);
    drawing.line(22, y, 22, end - 2, Palette.INK, 1.4);
    String tip = "M 22 " + Drawing.number(end) + " l -4.5 -8 l 9 0 z";
    drawing.path(tip, Palette.INK.hex(), Palette.INK, 0.5, false);
    drawing.lines(36, y + 12, turn, Drawing.SMALL, Palette.INK, Anchor.START);
    return end;
  }

  private String inWords() {
    List<String> words = new ArrayList<>();
    List<Part> plans = picture.parts(PictureRole.PLAN);
    for (int i = 0; i < plans.size(); i++) {
      words.add(plans.get(i).label() + ": " + name(plans.get(i)) + ".");
      if (i + 1 < plans.size()) {
        words.add(String.join(" ", turn(i)));
      }
    }
    return String.join(" ", words).strip();
  }
}
