package org.battenbook.export;

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
import org.battenbook.number.Rational;
import org.battenbook.operation.SpreadsheetText;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;

/** How formulas read the cells of places: in base units, rows by their numbers. */
final class PlaceReads {
  private static final String WILDCARDS = "*?~";

  private final BookPlan plan;
  private final CheckedBook book;
  private final Results results;
  private final Map<Table, Boolean> wildcards = new HashMap<>();

  PlaceReads(BookPlan plan, Results results) {
    this.plan = plan;
    this.results = results;
    this.book = results.program().book();
  }

  BookPlan plan() {
    return plan;
  }

  CheckedBook book() {
    return book;
  }

  Results results() {
    return results;
  }

  TablePlan rowsOf(Kind.RowOf kind) {
    Table table = book.book().table(kind.table());
    if (table == null) {
      throw new IllegalArgumentException("no table " + kind.table());
    }
    return plan.table(table);
  }

  /** The value of a place that has one, not one in each row. */
  SpreadsheetText single(Place place, String from) {
    return place.accept(new SingleRead(from));
  }

  /** The value of a place in a row of its table. */
  SpreadsheetText cell(Place place, int row, String from) {
    TablePlan table = tableOf(place);
    return place.accept(
        new CellsRead(
            column -> table.cell(column, row).seenFrom(from),
            helper -> table.cell(helper, row).seenFrom(from),
            SpreadsheetText::reference));
  }

  /** All values of a place, for an array. */
  SpreadsheetText column(Place place, String from) {
    TablePlan table = tableOf(place);
    return place.accept(
        new CellsRead(
            column -> table.range(column, from),
            helper -> table.range(helper, from),
            SpreadsheetText::column));
  }

  /** The value of a place in the row of a number. */
  SpreadsheetText lookedUp(Place place, SpreadsheetText row, String from) {
    TablePlan table = tableOf(place);
    return place.accept(
        new CellsRead(
            column -> table.range(column, from),
            helper -> table.range(helper, from),
            (range, content) -> index(range, content, row)));
  }

  private TablePlan tableOf(Place place) {
    return plan.table(Objects.requireNonNull(place.table()));
  }

  private static IllegalStateException unread(Place place) {
    return new IllegalStateException("no formula reads " + place.words());
  }

  /** Reads a value that is not of a table's row. */
  private final class SingleRead implements PlaceVisitor<SpreadsheetText> {
    private final String from;

    SingleRead(String from) {
      this.from = from;
    }

    @Override
    public SpreadsheetText line(Line line) {
      Kind kind = book.place(line).kind();
      SpreadsheetText cell = SpreadsheetText.reference(plan.name(line), content(kind));
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
      return PlaceReads.this.bound(new Spot(bound, 0), Standing.ofLine(from));
    }
  }

  /** Reads cells of a table. */
  private final class CellsRead implements PlaceVisitor<SpreadsheetText> {
    private final Function<Column, String> cells;
    private final Function<HelperColumn, String> helperCells;
    private final BiFunction<String, Content, SpreadsheetText> read;

    /**
     * Reads some cells of a table's columns.
     *
     * @param cells those of a column, as text
     * @param helperCells those of a helper column, as text
     * @param read how a formula reads them
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

  /** A row of a table by its number, with the name that it goes by. */
  SpreadsheetText row(TablePlan table, SpreadsheetText number, String from) {
    String keys = table.range(table.table().keyColumn(), from);
    return SpreadsheetText.row(number, index(keys, Content.TEXT, number));
  }

  /** The number of the row that a text calls. */
  SpreadsheetText match(SpreadsheetText name, TablePlan table, String from) {
    String keys = table.range(table.table().keyColumn(), from);
    if (hasWildcards(table.table())) {
      SpreadsheetText same = SpreadsheetText.column(keys, Content.TEXT).compared("=", name);
      return total("MATCH", SpreadsheetText.truth(true), same, number(0));
    }
    return call("MATCH", name, SpreadsheetText.reference(keys, Content.TEXT), number(0));
  }

  /** The helper column with the numbers of the rows that a column's values are. */
  HelperColumn numbers(Column column, Kind.RowOf rowOf) {
    TablePlan table = plan.table(column.table());
    TablePlan rows = rowsOf(rowOf);
    return table.helper(
        List.of("numbers", column),
        "row of " + column.name(),
        hasWildcards(rows.table()),
        row -> {
          String cell = table.cell(column, row).seenFrom(table.sheet());
          return match(SpreadsheetText.reference(cell, Content.TEXT), rows, table.sheet());
        },
        row -> CellContents.ofHelper(results.value(new Spot(column, row))));
  }

  /** The helper column of a bound in each row of a table. */
  private HelperColumn boundColumn(ErrorBound bound) {
    TablePlan table = tableOf(bound);
    HelperColumn made =
        table.helper(
            List.of("bound", bound),
            bound.label(),
            false,
            row -> bound(new Spot(bound, row), Standing.inRow(table, row)),
            row -> CellContents.ofHelper(results.value(new Spot(bound, row))));
    if (table.rowCount() > 0) {
      bound(new Spot(bound, 0), Standing.inRow(table, 0));
    }
    return made;
  }

  /** A bound: as rows say, else as its formula says. */
  private SpreadsheetText bound(Spot spot, Standing standing) {
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
    return new Translation(this, formula, standing).translate(formula.expression());
  }

  /** A number from a cell in the unit that its place is shown in. */
  private SpreadsheetText inBase(Place place, SpreadsheetText cell) {
    CheckedPlace checked = book.place(place);
    return checked.form() == null ? cell : cell.scaled(checked.form().unit().factor());
  }

  /** A number in base units for a cell in the unit that its place is shown in. */
  SpreadsheetText inShownUnit(Place place, SpreadsheetText number) {
    CheckedPlace checked = book.place(place);
    return checked.form() == null
        ? number
        : number.scaled(Rational.ONE.dividedBy(checked.form().unit().factor()));
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

  /** Whether a name could be taken for a pattern when it is looked for among the rows' names. */
  private boolean hasWildcards(Table table) {
    return wildcards.computeIfAbsent(
        table, t -> results.rows(t).keys().names().stream().anyMatch(PlaceReads::hasWildcard));
  }

  private static boolean hasWildcard(String name) {
    return name.chars().anyMatch(c -> WILDCARDS.indexOf(c) >= 0);
  }
}
