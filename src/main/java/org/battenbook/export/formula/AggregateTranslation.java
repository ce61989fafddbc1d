package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.choice;
import static org.battenbook.operation.SpreadsheetText.number;
import static org.battenbook.operation.SpreadsheetText.total;

import java.util.List;
import org.battenbook.book.Column;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Path;
import org.battenbook.check.Target;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.syntax.Aggregate;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.syntax.Expression;
import org.battenbook.syntax.Reference;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Translates an aggregate: one value from the rows of a table. The value of each row is in a
 * column. Rows that are matched with the outer row are compared by number, never by text. Any other
 * aggregate that reads the outer row becomes an array formula in a helper column.
 */
final class AggregateTranslation {
  private static final SpreadsheetText NONE = call("NA");
  private static final SpreadsheetText NOTHING = SpreadsheetText.text("");
  private static final SpreadsheetText ZERO = number(0);
  private static final SpreadsheetText ONE = number(1);

  private final Translation around;
  private final CheckedFormula formula;
  private final Aggregate aggregate;
  private final AggregateFunction function;
  private final @Nullable Expression of;
  private final TableLayout table;
  private final Conditions conditions;
  private final String sheet;

  AggregateTranslation(Translation around, Aggregate aggregate) {
    this.around = around;
    this.formula = around.formula();
    this.aggregate = aggregate;
    this.function = aggregate.function();
    this.of = function == AggregateFunction.COUNT ? null : aggregate.of();
    this.table = around.reads().layout().table(formula.table(aggregate));
    this.conditions = Conditions.of(aggregate.where(), formula);
    this.sheet = around.context().sheet();
  }

  SpreadsheetText translate() {
    boolean ofOuter = of != null && OuterReads.in(of, formula);
    if (!ofOuter && conditions.ofOuter().isEmpty()) {
      return asKind(overColumn());
    }
    Match match = ofOuter ? null : Match.of(conditions.ofOuter(), around, table);
    if (match == null || isExtreme()) {
      return HostedArray.of(around, aggregate, t -> new AggregateTranslation(t, aggregate).array());
    }
    SpreadsheetText matched = matched(match);
    return match.mayFail() ? choice(allThere(match), matched, NONE) : matched;
  }

  private boolean isExtreme() {
    return function == AggregateFunction.LARGEST || function == AggregateFunction.SMALLEST;
  }

  /** The values of the rows that count: their range, and the unit of its numbers. */
  private record Taken(SpreadsheetText range, Rational unit) {}

  private Taken taken() {
    Column own = ownColumn();
    if (own == null) {
      return ofHelper();
    }
    Form form = around.reads().book().place(own).form();
    Rational unit = form == null ? Rational.ONE : form.unit().factor();
    return new Taken(range(table.range(own, sheet)), unit);
  }

  /** The column whose values are used unchanged, or null. All rows must count. */
  private @Nullable Column ownColumn() {
    if (!conditions.ofInner().isEmpty() || !(of instanceof Reference reference)) {
      return null;
    }
    Path path = formula.path(reference);
    return path.through().isEmpty()
            && path.target() instanceof Target.Here here
            && here.place() instanceof Column column
        ? column
        : null;
  }

  private Taken ofHelper() {
    HelperColumn helper =
        around
            .reads()
            .helpers(table)
            .column(
                List.of(formula, aggregate, "taken"),
                aggregate.span().text(),
                false,
                this::takenOf,
                row -> new TakenValues(around.reads().results(), formula, aggregate).of(row));
    takenOf(0);
    return new Taken(range(helper.range(sheet)), Rational.ONE);
  }

  private SpreadsheetText takenOf(int row) {
    Translation inRow = around.at(FormulaContext.inRow(table, row));
    SpreadsheetText value = of == null ? ONE : inRow.translate(of);
    return Conditions.where(conditions.ofInner(), inRow::translate, value, NOTHING);
  }

  private SpreadsheetText overColumn() {
    if (function == AggregateFunction.COUNT && conditions.ofInner().isEmpty()) {
      return call("COUNTA", keys());
    }
    Taken taken = taken();
    SpreadsheetText count = call("COUNT", taken.range());
    return switch (function) {
      case COUNT -> count;
      case SUM -> call("SUM", taken.range()).scaled(taken.unit());
      case AVERAGE -> call("AVERAGE", taken.range()).scaled(taken.unit());
      case LARGEST -> unlessNone(count, call("MAX", taken.range())).scaled(taken.unit());
      case SMALLEST -> unlessNone(count, call("MIN", taken.range())).scaled(taken.unit());
    };
  }

  private SpreadsheetText matched(Match match) {
    SpreadsheetText numbers = range(match.numbers());
    boolean all = conditions.ofInner().isEmpty();
    if (function == AggregateFunction.COUNT && all) {
      return call("COUNTIF", numbers, match.wanted());
    }
    Taken taken = taken();
    SpreadsheetText sum = call("SUMIF", numbers, match.wanted(), taken.range());
    if (function != AggregateFunction.AVERAGE) {
      return sum.scaled(taken.unit());
    }
    if (!all) {
      throw new Inexpressible("an average over matched rows with a condition has no short formula");
    }
    return sum.scaled(taken.unit()).dividedBy(call("COUNTIF", numbers, match.wanted()));
  }

  private static SpreadsheetText allThere(Match match) {
    return call("ISNUMBER", Content.YES_NO, List.of(call("SUM", range(match.numbers()))));
  }

  /** The whole aggregate as an array formula for a cell of its own. */
  private SpreadsheetText array() {
    Translation inner = around.at(around.context().through(table));
    List<Expression> all = conditions.all();
    SpreadsheetText count = total("SUM", Conditions.where(all, inner::translate, ONE, ZERO));
    if (of == null) {
      return count;
    }
    SpreadsheetText value = inner.translate(of);
    SpreadsheetText sum = total("SUM", Conditions.where(all, inner::translate, value, ZERO));
    SpreadsheetText counted = Conditions.where(all, inner::translate, value, NOTHING);
    return switch (function) {
      case COUNT -> count;
      case SUM -> sum;
      case AVERAGE -> sum.dividedBy(count);
      case LARGEST -> unlessNone(count, total("MAX", counted));
      case SMALLEST -> unlessNone(count, total("MIN", counted));
    };
  }

  private static SpreadsheetText unlessNone(SpreadsheetText count, SpreadsheetText value) {
    return choice(count.compared("=", ZERO), NONE, value);
  }

  private SpreadsheetText keys() {
    return range(table.range(table.table().keyColumn(), sheet));
  }

  private SpreadsheetText asKind(SpreadsheetText text) {
    return formula.kind(aggregate) == Kind.DATE ? text.asDate() : text;
  }

  private static SpreadsheetText range(String range) {
    return SpreadsheetText.reference(range, Content.NUMBER);
  }
}
