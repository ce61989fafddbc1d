package org.battenbook.parse;

import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/**
 * Watches the spaces before lines. They mean nothing, but a person reads them: where a line of a
 * table stands as far out as the table itself, while earlier ones stand further in, a caution says
 * so. Once for each table.
 */
final class Indentation {
  private final SourceText source;
  private final Diagnostics diagnostics;
  private @Nullable Name table;
  private String tableIndent = "";
  private boolean firstIsDeeper;
  private boolean isFirst;

  Indentation(SourceText source, Diagnostics diagnostics) {
    this.source = source;
    this.diagnostics = diagnostics;
  }

  void page(Span head) {
    table = null;
  }

  void lines(Span head) {
    table = null;
  }

  void table(Span head, Name name) {
    table = name;
    tableIndent = indent(head);
    isFirst = true;
    firstIsDeeper = false;
  }

  void part(Span head) {
    line(head);
  }

  void line(Span line) {
    if (table == null) {
      return;
    }
    String indent = indent(line);
    boolean deeper = indent.length() > tableIndent.length() && indent.startsWith(tableIndent);
    if (isFirst) {
      firstIsDeeper = deeper;
      isFirst = false;
    } else if (firstIsDeeper && tableIndent.startsWith(indent)) {
      caution(line, table);
    }
  }

  private void caution(Span line, Name name) {
    table = null;
    diagnostics.caution(
        "indentation-disagrees",
        line,
        "this line belongs to table '%s', but it is not indented under it".formatted(name),
        "write a line 'lines' above it if it belongs to the page, or indent it");
  }

  private String indent(Span line) {
    int start = source.lineStart(line.line());
    return source.text().substring(start, line.start());
  }
}
