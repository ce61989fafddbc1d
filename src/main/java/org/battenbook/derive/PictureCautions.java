package org.battenbook.derive;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.Spot;
import org.battenbook.book.Loader;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.Trace;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Span;
import org.battenbook.syntax.Call;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.value.Value;

/** Tells of the image files that a job names and that could not be looked into. */
public final class PictureCautions {
  private final Results results;
  private final CheckedBook book;
  private final Map<Span, Diagnostic> told = new LinkedHashMap<>();

  private PictureCautions(Results results) {
    this.results = results;
    this.book = results.program().book();
  }

  /** A caution at each text that names no image, with the reason. */
  public static List<Diagnostic> of(Results results) {
    PictureCautions cautions = new PictureCautions(results);
    for (CheckedPlace checked : cautions.book.places()) {
      CheckedFormula formula = checked.formula();
      boolean inCells =
          checked.entries().formulas().stream().anyMatch(CheckedFormula::countsPixels);
      if (inCells || (formula != null && formula.countsPixels())) {
        cautions.look(checked);
      }
    }
    return new ArrayList<>(cautions.told.values());
  }

  private void look(CheckedPlace checked) {
    results.spots(checked.place()).forEach(this::look);
  }

  private void look(Spot spot) {
    Trace trace = Trace.of(results, spot);
    if (trace != null) {
      look(trace, trace.formula().expression(), spot.row());
    }
  }

  private void look(Trace trace, Expression node, int row) {
    if (node instanceof Call call && trace.formula().isPixelCount(call)) {
      Expression file = call.arguments().get(0);
      if (trace.value(file) instanceof Value.Text name) {
        Loader.Unreadable trouble = book.book().pictures().of(name.text()).trouble();
        if (trouble != null) {
          tell(at(trace.formula(), file, row), trouble);
        }
      }
    }
    node.children().forEach(child -> look(trace, child, row));
  }

  private void tell(Span at, Loader.Unreadable trouble) {
    told.putIfAbsent(
        at,
        new Diagnostic(
            Diagnostic.Severity.CAUTION,
            trouble.code(),
            at,
            List.of(),
            trouble.message() + "; it counts as no image",
            trouble.repair()));
  }

  /** Where the text stands: in the cell or line that is read, else in the formula. */
  private Span at(CheckedFormula formula, Expression file, int row) {
    if (file instanceof Reference reference) {
      Path path = formula.path(reference);
      if (path.through().isEmpty() && path.target() instanceof Target.Here here) {
        return results
            .decisions()
            .origin(new Spot(here.place(), here.place().table() == null ? 0 : row));
      }
    }
    return file.span();
  }
}
