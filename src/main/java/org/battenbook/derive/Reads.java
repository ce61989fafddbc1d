package org.battenbook.derive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedFunction;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AtWorst;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.syntax.Selection;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Which spots one run of a formula read. */
final class Reads {
  /** How many rows of a total are told of one by one. */
  static final int MOST_ROWS = 24;

  private final Results results;
  private final Trace trace;
  private final int row;
  private final Set<Spot> spots = new LinkedHashSet<>();
  private int rowsLeftOut;

  private Reads(Results results, Trace trace, int row) {
    this.results = results;
    this.trace = trace;
    this.row = row;
  }

  static Reads of(Results results, Trace trace, int row) {
    Reads reads = new Reads(results, trace, row);
    reads.visit(trace.formula().expression());
    return reads;
  }

  /** In the order of the formula's words, each once. */
  Set<Spot> spots() {
    return spots;
  }

  int rowsLeftOut() {
    return rowsLeftOut;
  }

  private void visit(Expression node) {
    if (node instanceof Reference reference) {
      if (trace.value(reference) != null) {
        read(trace.formula(), reference, row, row);
      }
    } else if (node instanceof Aggregate aggregate) {
      rows(trace.formula().table(aggregate), aggregate.children(), aggregate.where());
    } else if (node instanceof AtWorst atWorst) {
      node.children().forEach(this::visit);
      margin(atWorst);
    } else if (node instanceof Selection) {
      selected(node);
    } else {
      functionLines(node);
      node.children().forEach(this::visit);
    }
  }

  /** What may be off at worst is a formula of its own. */
  private void margin(AtWorst atWorst) {
    CheckedFormula margin = results.program().book().margin(atWorst);
    if (margin != null) {
      spots.addAll(of(results, Trace.of(results, margin, row), row).spots());
    }
  }

  /** A selection is told by the row that it chose, and by what the choice compared there. */
  private void selected(Expression node) {
    if (trace.value(node) instanceof Value.Row chosen) {
      node.children().forEach(child -> readAll(child, chosen.row()));
    }
  }

  private void rows(Table table, List<Expression> read, @Nullable Expression where) {
    int told = 0;
    for (int inner = 0; inner < table.rowCount(); inner++) {
      if (where != null && !counts(where, inner)) {
        continue;
      }
      if (told == MOST_ROWS) {
        rowsLeftOut++;
      } else {
        told++;
        int at = inner;
        read.forEach(child -> readAll(child, at));
      }
    }
  }

  private boolean counts(Expression where, int inner) {
    return Trace.innerValue(results, trace.formula(), where, inner, row)
        .equals(new Value.YesNo(true));
  }

  private void readAll(Expression node, int inner) {
    if (node instanceof Reference reference) {
      read(trace.formula(), reference, inner, row);
    }
    node.children().forEach(child -> readAll(child, inner));
  }

  /** The lines that a function of the workbook's own reads besides its arguments. */
  private void functionLines(Expression node) {
    if (node instanceof Call call) {
      CheckedFunction function = trace.formula().function(call);
      if (function != null) {
        lines(function.body(), function.body().expression());
      }
    }
  }

  private void lines(CheckedFormula body, Expression node) {
    if (node instanceof Reference reference
        && body.path(reference).target() instanceof Target.Here here
        && !(here.place() instanceof Column)) {
      spots.add(new Spot(here.place(), 0));
    }
    node.children().forEach(child -> lines(body, child));
  }

  private void read(CheckedFormula formula, Reference reference, int here, int outer) {
    Path path = formula.path(reference);
    Optional<Spot> spot = first(path.target(), here, outer);
    if (spot.isEmpty()) {
      return;
    }
    spots.add(spot.get());
    Spot at = spot.get();
    for (Column column : path.through()) {
      if (!(results.value(at) instanceof Value.Row led)) {
        return;
      }
      at = new Spot(column, led.row());
      spots.add(at);
    }
  }

  private static Optional<Spot> first(Target target, int here, int outer) {
    if (target instanceof Target.Here place) {
      boolean column = place.place() instanceof Column;
      return Optional.of(new Spot(place.place(), column ? here : 0));
    }
    if (target instanceof Target.Above above) {
      return here == 0 ? Optional.empty() : Optional.of(new Spot(above.column(), here - 1));
    }
    return target instanceof Target.Outer read
        ? Optional.of(new Spot(read.column(), outer))
        : Optional.empty();
  }

  /** The spots in a list. */
  List<Spot> inOrder() {
    return new ArrayList<>(spots);
  }
}
