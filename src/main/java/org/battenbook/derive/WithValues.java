package org.battenbook.derive;

import java.util.ArrayList;
import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.Path;
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
import org.battenbook.value.ValueVisitor;
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
    return value.accept(new InFormula(node));
  }

  /** Values as a formula has them: texts and rows in quotes, others as their place shows them. */
  private final class InFormula implements ValueVisitor<String> {
    private final Expression node;

    InFormula(Expression node) {
      this.node = node;
    }

    @Override
    public String amount(Value.Amount amount) {
      return asRead(amount, book.forms().form(amount.quantity().dimension()));
    }

    @Override
    public String text(Value.Text text) {
      return quoted(text.text());
    }

    @Override
    public String yesNo(Value.YesNo yesNo) {
      return asRead(yesNo, null);
    }

    @Override
    public String day(Value.Day day) {
      return asRead(day, null);
    }

    @Override
    public String row(Value.Row row) {
      return quoted(row.name());
    }

    @Override
    public String fault(Value.Fault fault) {
      return asRead(fault, null);
    }

    @Override
    public String waiting(Value.Waiting waiting) {
      return asRead(waiting, null);
    }

    /** In the form of the place that is read; else in another. */
    private String asRead(Value value, @Nullable Form form) {
      Spot spot =
          node instanceof Reference reference ? spot(trace.formula().path(reference)) : null;
      return spot == null
          ? ShownValue.of(value, form).text()
          : results.decisions().show(spot, value).text();
    }
  }

  private static String quoted(String words) {
    return '"' + words.replace("\"", "\"\"") + '"';
  }

  /** The spot that a path reads in this row. */
  private @Nullable Spot spot(Path path) {
    Spot at = path.target().accept(new SpotInRow(row)).orElse(null);
    for (Place place : path.through()) {
      if (at == null || !(results.value(at) instanceof Value.Row led)) {
        return null;
      }
      at = new Spot(place, led.row());
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
