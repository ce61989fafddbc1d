package org.battenbook.export.formula;

import static org.battenbook.operation.SpreadsheetText.call;
import static org.battenbook.operation.SpreadsheetText.number;
import static org.battenbook.operation.SpreadsheetText.total;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Condition;
import org.battenbook.book.ErrorBound;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.PlaceVisitor;
import org.battenbook.book.Setting;
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

  /** The value of a place that has only one. */
  SpreadsheetText single(Place place, String from) {
    return place.accept(new SingleRead(from));
  }

  /** The value of a place in a row of its table. */
  SpreadsheetText cell(Place place, int row, String from) {
    TableLayout table = tableOf(place);
    return place.accept(
        new CellsRead(
            column -> table.cell(column, row).seenFrom(from),
            helper -> helper.cell(row).seenFrom(from),
            SpreadsheetText::reference));
  }

  /** All values of a place, for an array formula. */
  SpreadsheetText column(Place place, String from) {
    TableLayout table = tableOf(place);
    return place.accept(
        new CellsRead(
            column -> table.range(column, from),
            helper -> helper.range(from),
            SpreadsheetText::column));
  }

  /** The value of a place in the row with a number. */
  SpreadsheetText lookedUp(Place place, SpreadsheetText row, String from) {
    TableLayout table = tableOf(place);
    return place.accept(
        new CellsRead(
            column -> table.range(column, from),
            helper -> helper.range(from),
            (range, content) -> index(range, content, row)));
  }

  private TableLayout tableOf(Place place) {
    return layout.table(Objects.requireNonNull(place.table()));
  }

  private static IllegalStateException unread(Place place) {
    return new IllegalStateException("no formula reads " + place.words());
  }

  /** Reads a place that has one value. */
  private final class SingleRead implements PlaceVisitor<SpreadsheetText> {
    private final String from;

    SingleRead(String from) {
      this.from = from;
    }

    @Override
    public SpreadsheetText line(Line line) {
      Kind kind = book.place(line).kind();
      SpreadsheetText cell = SpreadsheetText.reference(layout.name(line), content(kind));
      return kind instanceof Kind.RowOf rowOf
          ? SpreadsheetText.row(match(cell, rowsOf(rowOf), from), cell)
          : inBase(line, cell);
    }

    @Override
    public SpreadsheetText column(Column column) {
      throw unread(column);
    }

    @Override
    public SpreadsheetText condition(Condition condition) {
      throw unread(condition);
    }

    @Override
    public SpreadsheetText setting(Setting setting) {
      throw unread(setting);
    }

    @Override
    public SpreadsheetText errorBound(ErrorBound bound) {
      return PlaceReads.this.bound(new Spot(bound, 0), FormulaContext.ofLine(from));
    }
  }

  /** Reads cells of one column of a table. */
  private final class CellsRead implements PlaceVisitor<SpreadsheetText> {
    private final Function<Column, String> cells;
    private final Function<HelperColumn, String> helperCells;
    private final BiFunction<String, Content, SpreadsheetText> read;

    /**
     * Reads one cell or all cells of a column.
     *
     * @param cells the text for cells of a column
     * @param helperCells the text for cells of a helper column
     * @param read makes the formula that reads them
     */
    CellsRead(
        Function<Column, String> cells,
        Function<HelperColumn, String> helperCells,
        BiFunction<String, Content, SpreadsheetText> read) {
      this.cells = cells;
      this.helperCells = helperCells;
      this.read = read;
    }

    @Override
    public SpreadsheetText column(Column column) {
      Kind kind = book.place(column).kind();
      SpreadsheetText own = read.apply(cells.apply(column), content(kind));
      return kind instanceof Kind.RowOf rowOf
          ? SpreadsheetText.row(helper(numbers(column, rowOf), Content.NUMBER), own)
          : inBase(column, own);
    }

    @Override
    public SpreadsheetText errorBound(ErrorBound bound) {
      return helper(boundColumn(bound), content(book.place(bound).kind()));
    }

    private SpreadsheetText helper(HelperColumn column, Content content) {
      return read.apply(helperCells.apply(column), content);
    }

    @Override
    public SpreadsheetText line(Line line) {
      throw unread(line);
    }

    @Override
    public SpreadsheetText condition(Condition condition) {
      throw unread(condition);
    }

    @Override
    public SpreadsheetText setting(Setting setting) {
      throw unread(setting);
    }
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

  /** The helper column for an error bound, in base units. */
  private HelperColumn boundColumn(ErrorBound bound) {
    TableLayout table = tableOf(bound);
    HelperColumn made =
        helpers(table)
            .column(
                List.of("bound", bound),
                bound.label(),
                false,
                row -> bound(new Spot(bound, row), FormulaContext.inRow(table, row)),
                row -> CellContents.ofHelper(results.value(new Spot(bound, row))));
    if (table.rowCount() > 0) {
      bound(new Spot(bound, 0), FormulaContext.inRow(table, 0));
    }
    return made;
  }

  /** The error bound in one row: as the row writes it, or else its formula. */
  private SpreadsheetText bound(Spot spot, FormulaContext context) {
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
