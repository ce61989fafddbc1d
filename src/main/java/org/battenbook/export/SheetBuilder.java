package org.battenbook.export;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.check.CheckedBook;
import org.battenbook.unit.Form;
import org.battenbook.value.Kind;

/** The cells of one page. */
final class SheetBuilder {
  private final SheetPlan plan;
  private final CheckedBook book;
  private final PlaceCells places;
  private final List<SheetCell> cells = new ArrayList<>();

  SheetBuilder(SheetPlan plan, CheckedBook book, PlaceCells places) {
    this.plan = plan;
    this.book = book;
    this.places = places;
  }

  /** Lays out everything that is there to be seen. */
  void addVisible() {
    add(SheetCell.words(0, 0, Look.TITLE, plan.page().title()));
    if (!plan.page().note().isEmpty()) {
      add(SheetCell.words(1, 0, Look.NOTE, plan.page().note()));
    }
    plan.tables().values().forEach(this::table);
    if (plan.linesHeading() >= 0) {
      lineHeadings();
      plan.lines().forEach(this::line);
    }
  }

  /** Lays out the hidden columns that formulas turned out to need. */
  void addHelpers() {
    for (TablePlan table : plan.tables().values()) {
      for (HelperColumn helper : table.helpers()) {
        helper(table, helper);
      }
    }
  }

  Sheet build() {
    cells.sort(Comparator.comparingInt(SheetCell::row).thenComparingInt(SheetCell::column));
    Widths widths = Widths.of(cells);
    TreeSet<Integer> hidden = new TreeSet<>();
    plan.tables()
        .values()
        .forEach(table -> table.helpers().forEach(helper -> hidden.add(helper.column())));
    return new Sheet(plan.name(), cells, widths.columns(), widths.rows(), hidden, frozenRows(), 1);
  }

  private int frozenRows() {
    if (plan.tables().size() == 1) {
      return plan.tables().values().iterator().next().headingRow() + 1;
    }
    return plan.tables().isEmpty() ? plan.linesHeading() + 1 : 1;
  }

  private void add(SheetCell cell) {
    cells.add(cell);
  }

  private void table(TablePlan table) {
    if (plan.hasSubtitles()) {
      String note = table.table().note();
      String name = table.table().name().text();
      add(SheetCell.words(table.headingRow() - 1, 0, Look.SUBTITLE, name));
      if (!note.isEmpty()) {
        add(SheetCell.words(table.headingRow() - 1, 1, Look.NOTE, note));
      }
    }
    table.columns().forEach((column, at) -> column(table, column, at));
  }

  private void column(TablePlan table, Column column, int at) {
    add(
        new SheetCell(
            table.headingRow(),
            at,
            new CellContent.Words(withUnit(column)),
            isNumber(column) ? Look.NUMBER_HEADING : Look.HEADING,
            NumberFormats.GENERAL,
            Remarks.all(column)));
    for (int row = 0; row < table.table().rowCount(); row++) {
      Spot spot = new Spot(column, row);
      add(places.cell(spot, table.cell(column, row), Standing.inRow(table, row)));
    }
  }

  private boolean isNumber(Place place) {
    return book.place(place).kind() instanceof Kind.Measured;
  }

  private String withUnit(Place place) {
    String unit = unit(place);
    return place.name().text() + (unit.isEmpty() ? "" : "\n" + unit);
  }

  private String unit(Place place) {
    Form form = book.place(place).form();
    return form == null ? "" : form.unit().symbol();
  }

  private void lineHeadings() {
    Map<Integer, String> headings =
        Map.of(
            SheetPlan.NAME, "line",
            SheetPlan.VALUE, "value",
            SheetPlan.UNIT, "unit",
            SheetPlan.WRITTEN, "as written",
            SheetPlan.NOTE, "note");
    headings.forEach(
        (at, words) -> {
          Look look = at == SheetPlan.VALUE ? Look.NUMBER_HEADING : Look.HEADING;
          add(SheetCell.words(plan.linesHeading(), at, look, words));
        });
  }

  private void line(Line line, int row) {
    add(SheetCell.words(row, SheetPlan.NAME, Look.NAME, line.name().text()));
    Address at = new Address(plan.name(), row, SheetPlan.VALUE);
    add(places.cell(new Spot(line, 0), at, Standing.ofLine(plan.name())));
    add(SheetCell.words(row, SheetPlan.UNIT, Look.UNIT, unit(line)));
    remark(row, SheetPlan.WRITTEN, Remarks.written(line));
    remark(row, SheetPlan.NOTE, Remarks.note(line));
  }

  /** Broken into lines on a page of its own; beside tables their columns are too narrow for it. */
  private void remark(int row, int column, String words) {
    String format = plan.tables().isEmpty() ? NumberFormats.TEXT : NumberFormats.GENERAL;
    if (!words.isEmpty()) {
      add(new SheetCell(row, column, new CellContent.Words(words), Look.NOTE, format, ""));
    }
  }

  private void helper(TablePlan table, HelperColumn helper) {
    add(SheetCell.words(table.headingRow(), helper.column(), Look.NOTE, helper.heading()));
    for (int row = 0; row < table.table().rowCount(); row++) {
      String formula = FormulaLimits.checked(helper.formula().apply(row)).toString();
      CellContent content =
          new CellContent.Formula(formula, helper.array(), helper.value().apply(row));
      add(
          new SheetCell(
              table.sheetRow(row), helper.column(), content, Look.NOTE, NumberFormats.GENERAL, ""));
    }
  }
}
