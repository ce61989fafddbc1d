package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.number;
import static org.battenbook.operation.SpreadsheetText.total;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedBook;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.CheckedPlace;
import org.battenbook.evaluate.Results;
import org.battenbook.export.file.CellContents;
import org.battenbook.export.layout.FileLayout;
import org.battenbook.export.layout.TableLayout;
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** Reads the cells of places in formulas: numbers in base units, rows by their numbers. */
final class PlaceReads {
  private static final String WILDCARDS = "*?~";

  private final FileLayout layout;
  private final CheckedBook book;
  private final Results results;
  private final Map<TableLayout, HelperColumns> helpers = new HashMap<>();
  private final Map<Table, Boolean> wildcards = new HashMap<>();

  PlaceReads(FileLayout layout, Results results) {
    this.layout = layout;
    this.results = results;
    this.book = results.program().book();
  }

  FileLayout layout() {
    return layout;
  }

  CheckedBook book() {
    return book;
  }

  Results results() {
    return results;
  }

  /** The helper columns beside a table. */
  HelperColumns helpers(TableLayout table) {
    return helpers.computeIfAbsent(table, HelperColumns::new);
  }

  TableLayout rowsOf(Kind.RowOf kind) {
    Table table = book.book().table(kind.table());
    if (table == null) {
      throw new IllegalArgumentException("no table " + kind.table());
    }
    return layout.table(table);
  }

  /** The value of a line. */
  SpreadsheetText line(Line line, String from) {
    if (book.isBeside(line)) {
      return beside(new Spot(line, 0), FormulaContext.ofLine(from));
    }
    Kind kind = book.place(line).kind();
    SpreadsheetText cell = SpreadsheetText.reference(layout.name(line), content(kind));
    return kind instanceof Kind.RowOf rowOf
        ? SpreadsheetText.row(match(cell, rowsOf(rowOf), from), cell)
        : inBase(line, cell);
  }

  /** The value of a column in a row. */
  SpreadsheetText cell(Column column, int row, String from) {
    TableLayout table = layout.table(column.table());
    Kind kind = book.place(column).kind();
    if (book.isBeside(column)) {
      String cell = beside(column).cell(row).seenFrom(from);
      return SpreadsheetText.reference(cell, content(kind));
    }
    SpreadsheetText cell =
        SpreadsheetText.reference(table.cell(column, row).seenFrom(from), content(kind));
    if (kind instanceof Kind.RowOf rowOf) {
      HelperColumn numbers = numbers(column, rowOf);
      String number = numbers.cell(row).seenFrom(from);
      return SpreadsheetText.row(SpreadsheetText.reference(number, Content.NUMBER), cell);
    }
    return inBase(column, cell);
  }

  /** All values of a column, for an array formula. */
  SpreadsheetText column(Column column, String from) {
    TableLayout table = layout.table(column.table());
    Kind kind = book.place(column).kind();
    if (book.isBeside(column)) {
      return SpreadsheetText.column(beside(column).range(from), content(kind));
    }
    SpreadsheetText cells = SpreadsheetText.column(table.range(column, from), content(kind));
    if (kind instanceof Kind.RowOf rowOf) {
      String numbers = numbers(column, rowOf).range(from);
      return SpreadsheetText.row(SpreadsheetText.column(numbers, Content.NUMBER), cells);
    }
    return inBase(column, cells);
  }

  /** The value of a column in the row with a number. */
  SpreadsheetText lookedUp(Column column, SpreadsheetText row, String from) {
    TableLayout table = layout.table(column.table());
    Kind kind = book.place(column).kind();
    if (book.isBeside(column)) {
      return index(beside(column).range(from), content(kind), row);
    }
    SpreadsheetText found = index(table.range(column, from), content(kind), row);
    if (kind instanceof Kind.RowOf rowOf) {
      String numbers = numbers(column, rowOf).range(from);
      return SpreadsheetText.row(index(numbers, Content.NUMBER, row), found);
    }
    return inBase(column, found);
  }

  /** A row of a table by its number, with its name. */
  SpreadsheetText row(TableLayout table, SpreadsheetText number, String from) {
    String keys = table.range(table.table().keyColumn(), from);
    return SpreadsheetText.row(number, index(keys, Content.TEXT, number));
  }

  /** The number of the row with a name. */
  SpreadsheetText match(SpreadsheetText name, TableLayout table, String from) {
    String keys = table.range(table.table().keyColumn(), from);
    if (hasWildcards(table.table())) {
      SpreadsheetText same = SpreadsheetText.column(keys, Content.TEXT).compared("=", name);
      return total("MATCH", SpreadsheetText.truth(true), same, number(0));
    }
    return call("MATCH", name, SpreadsheetText.reference(keys, Content.TEXT), number(0));
  }

  /** The helper column with row numbers, for a column whose values are rows. */
  HelperColumn numbers(Column column, Kind.RowOf rowOf) {
    TableLayout table = layout.table(column.table());
    TableLayout rows = rowsOf(rowOf);
    return helpers(table)
        .column(
            List.of("numbers", column),
            "row of " + column.name(),
            hasWildcards(rows.table()),
            row -> {
              String cell = table.cell(column, row).seenFrom(table.sheet());
              return match(SpreadsheetText.reference(cell, Content.TEXT), rows, table.sheet());
            },
            row -> CellContents.ofHelper(results.value(new Spot(column, row))));
  }

  /** The helper column for the tolerance of a column, in base units. */
  private HelperColumn beside(Column column) {
    TableLayout table = layout.table(column.table());
    HelperColumn made =
        helpers(table)
            .column(
                List.of("beside", column),
                column.name().text(),
                false,
                row -> beside(new Spot(column, row), FormulaContext.inRow(table, row)),
                row -> CellContents.ofHelper(results.value(new Spot(column, row))));
    if (table.rowCount() > 0) {
      beside(new Spot(column, 0), FormulaContext.inRow(table, 0));
    }
    return made;
  }

  /** The tolerance in one row: as the row writes it, or else its formula. */
  private SpreadsheetText beside(Spot spot, FormulaContext context) {
    CheckedPlace checked = book.place(spot.place());
    CheckedFormula own = results.decisions().ownFormula(spot);
    Value written = results.decisions().written(spot);
    CheckedFormula formula = own == null ? checked.formula() : own;
    if (own == null && written instanceof Value.YesNo filledIn) {
      return SpreadsheetText.truth(filledIn.yes());
    }
    if (own == null && written instanceof Value.Amount off) {
      return number((Rational) off.quantity().number());
    }
    if (formula == null) {
      throw new Inexpressible("it has no value yet");
    }
    return new Translation(this, formula, context).translate(formula.expression());
  }

  /** The number in a cell, converted to base units from the unit that its place is shown in. */
  private SpreadsheetText inBase(Place place, SpreadsheetText cell) {
    CheckedPlace checked = book.place(place);
    return checked.form() == null ? cell : cell.scaled(checked.form().unit().factor());
  }

  static Content content(Kind kind) {
    if (kind instanceof Kind.Measured) {
      return Content.NUMBER;
    }
    if (kind == Kind.YES_NO) {
      return Content.YES_NO;
    }
    return kind == Kind.DATE ? Content.DATE : Content.TEXT;
  }

  private static SpreadsheetText index(String range, Content content, SpreadsheetText row) {
    return call("INDEX", content, List.of(SpreadsheetText.reference(range, content), row));
  }

  /** Whether a program could read the name of a row as a pattern when it looks the name up. */
  private boolean hasWildcards(Table table) {
    return wildcards.computeIfAbsent(
        table, t -> results.rows(t).keys().names().stream().anyMatch(PlaceReads::hasWildcard));
  }

  private static boolean hasWildcard(String name) {
    return name.chars().anyMatch(c -> WILDCARDS.indexOf(c) >= 0);
  }
}
