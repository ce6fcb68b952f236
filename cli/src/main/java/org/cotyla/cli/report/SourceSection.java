package org.cotyla.cli.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.cotyla.name.Names;
import org.cotyla.protocol.Protocol;
import org.cotyla.protocol.Row;
import org.cotyla.protocol.Source;

/** The sources of the rows that count, each with how certain it is. */
final class SourceSection {

  private final Sheet sheet;

  SourceSection(Sheet sheet) {
    this.sheet = sheet;
  }

  void write() {
    Set<String> cited = new LinkedHashSet<>();
    sheet.advice().decisions().stream()
        .flatMap(result -> result.counting().stream())
        .forEach(firing -> cited.addAll(firing.row().sources()));
    if (cited.isEmpty()) {
      return;
    }
    Markup markup = sheet.markup();
    markup.start("section", "aria-labelledby", "sources");
    markup.leaf("h3", "Sources of these rows", "id", "sources");
    List<TwoColumns.Entry> entries =
        sheet.advice().protocol().sources().stream()
            .filter(source -> cited.contains(source.key()))
            .map(this::entry)
            .toList();
    TwoColumns.Block all = new TwoColumns.Block("h4", "", "dl", "sources", entries);
    new TwoColumns(markup, List.of(all)).write();
    markup.end();
  }

  private TwoColumns.Entry entry(Source source) {
    String key = source.key() + " (" + source.certainty().word() + ")";
    return new TwoColumns.Entry(
        key.length() + source.citation().length() + 2,
        () -> {
          Markup markup = sheet.markup();
          markup.start("div");
          markup.leaf("dt", key);
          markup.leaf("dd", source.citation()).end();
        });
  }

  /** The row's sources, each with its certainty. */
  static String inShort(Protocol protocol, Row row) {
    return row.sources().stream()
        .map(key -> protocol.source(key).map(SourceSection::inShort).orElse(key))
        .collect(Collectors.joining(", "));
  }

  /** Only the certainty when the key says the same. */
  private static String inShort(Source source) {
    String certainty = source.certainty().word();
    boolean same = Names.key(source.key()).equals(Names.key(certainty));
    return same ? certainty : source.key() + " (" + certainty + ")";
  }
}
