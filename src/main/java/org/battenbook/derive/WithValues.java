package org.battenbook.derive;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.source.Span;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Formula;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Selection;
import org.battenbook.unit.Form;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Writes a formula with the values of its names put in; a branch not taken stays as written. */
final class WithValues {
  private final CheckedBook book;
  private final Results results;
  private final Trace trace;
  private final int row;
  private final List<Put> puts = new ArrayList<>();

  private record Put(Span span, String text) {}

  private WithValues(CheckedBook book, Results results, Trace trace, int row) {
    this.book = book;
    this.results = results;
    this.trace = trace;
    this.row = row;
  }

  static String of(CheckedBook book, Results results, Trace trace, int row) {
    WithValues writer = new WithValues(book, results, trace, row);
    writer.visit(trace.formula().expression());
    return writer.text(trace.formula().expression().span());
  }

  private void visit(Expression node) {
    boolean whole =
        node instanceof Reference || node instanceof Aggregate || node instanceof Selection;
    if (!whole) {
      node.children().forEach(this::visit);
      return;
    }
    Value value = trace.value(node);
    if (value != null) {
      puts.add(new Put(node.span(), shown(node, value)));
    }
  }

  private String shown(Expression node, Value value) {
    if (value instanceof Value.Row rowValue) {
      return "\"" + rowValue.name().replace("\"", "\"\"") + "\"";
    }
    if (value instanceof Value.Text text) {
      return "\"" + text.text().replace("\"", "\"\"") + "\"";
    }
    if (node instanceof Reference reference) {
      Spot spot = spot(trace.formula().path(reference));
      if (spot != null) {
        return results.decisions().show(spot, value).text();
      }
    }
    return ShownValue.of(value, form(value)).text();
  }

  private @Nullable Form form(Value value) {
    return value instanceof Value.Amount amount
        ? book.forms().form(amount.quantity().dimension())
        : null;
  }

  /** The spot that a path reads in this row. */
  private @Nullable Spot spot(Path path) {
    Spot at = null;
    if (path.target() instanceof Target.Here here) {
      at = new Spot(here.place(), here.place() instanceof Column ? row : 0);
    } else if (path.target() instanceof Target.Above above && row > 0) {
      at = new Spot(above.column(), row - 1);
    }
    for (Column column : path.through()) {
      if (at == null || !(results.value(at) instanceof Value.Row led)) {
        return null;
      }
      at = new Spot(column, led.row());
    }
    return at;
  }

  private String text(Span whole) {
    StringBuilder text = new StringBuilder();
    String source = whole.source().text();
    int at = whole.start();
    for (Put put : puts) {
      text.append(source, at, put.span().start()).append(put.text());
      at = put.span().end();
    }
    return Formula.oneLine(text.append(source, at, whole.end()).toString().strip());
  }
}
