package org.battenbook.export;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.battenbook.bind.Spot;
import org.battenbook.book.Edition;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.Why;
import org.battenbook.export.file.Address;
import org.battenbook.export.file.CellContent;
import org.battenbook.export.file.Look;
import org.battenbook.export.file.NumberFormats;
import org.battenbook.export.file.SheetCell;
import org.battenbook.export.file.SheetRows;
import org.battenbook.export.layout.DerivationLayout;

/**
 * The rows of the sheet that shows how each value was calculated. Results are read from the cells
 * of the values. The other texts are those of the job when it was exported.
 */
final class DerivationRows implements SheetRows {
  private static final String ALL =
      "One row for each value. Results follow the other sheets. Formulas with numbers are from the"
          + " time of the export.";
  private static final String SOME =
      "One row for each line, and one for the first row of each column, because the job has too many"
          + " values to show all. Results follow the other sheets.";

  private final DerivationLayout layout;
  private final PlaceCells places;
  private final List<Edition> editions;

  DerivationRows(DerivationLayout layout, PlaceCells places, List<Edition> editions) {
    this.layout = layout;
    this.places = places;
    this.editions = editions;
  }

  @Override
  public void each(Consumer<List<SheetCell>> row) {
    row.accept(List.of(SheetCell.words(0, 0, Look.TITLE, "How calculated")));
    row.accept(List.of(SheetCell.words(1, 0, Look.NOTE, about())));
    row.accept(headings());
    for (int i = 0; i < layout.spots().size(); i++) {
      row.accept(value(i));
    }
  }

  /** What the sheet shows, and which editions it was calculated with. */
  private String about() {
    StringBuilder about = new StringBuilder(layout.isWhole() ? ALL : SOME);
    for (Edition edition : editions) {
      about.append(" Calculated with ").append(edition.words()).append('.');
    }
    return about.toString();
  }

  private static List<SheetCell> headings() {
    int row = DerivationLayout.HEADING_ROW;
    return List.of(
        SheetCell.words(row, DerivationLayout.NAME, Look.HEADING, "value"),
        SheetCell.words(row, DerivationLayout.ROW, Look.HEADING, "row"),
        SheetCell.words(row, DerivationLayout.RESULT, Look.NUMBER_HEADING, "result"),
        SheetCell.words(row, DerivationLayout.UNIT, Look.HEADING, "unit"),
        SheetCell.words(row, DerivationLayout.FORMULA, Look.HEADING, "formula"),
        SheetCell.words(row, DerivationLayout.WITH_VALUES, Look.HEADING, "with numbers"),
        SheetCell.words(row, DerivationLayout.SET_IN, Look.HEADING, "file and line"),
        SheetCell.words(row, DerivationLayout.CHANGED, Look.HEADING, "changed"));
  }

  private List<SheetCell> value(int index) {
    Spot spot = layout.spots().get(index);
    int row = DerivationLayout.HEADING_ROW + 1 + index;
    Address at = layout.address(index);
    Derivation step = Why.step(places.results(), spot);
    List<SheetCell> cells = new ArrayList<>();
    cells.add(
        new SheetCell(
            row,
            DerivationLayout.NAME,
            new CellContent.Words(spot.place().label()),
            Look.LINK,
            NumberFormats.TEXT,
            "",
            at.seenFrom("")));
    text(row, DerivationLayout.ROW, places.rowName(spot), cells);
    cells.add(places.readFrom(spot, at, new Address(layout.sheet(), row, DerivationLayout.RESULT)));
    text(row, DerivationLayout.UNIT, places.unit(spot.place()), cells);
    text(row, DerivationLayout.FORMULA, formula(step), cells);
    text(row, DerivationLayout.WITH_VALUES, step.withValues(), cells);
    text(row, DerivationLayout.SET_IN, step.at().place(), cells);
    text(row, DerivationLayout.CHANGED, changed(step), cells);
    return cells;
  }

  private static String formula(Derivation step) {
    return switch (step.how()) {
      case MISSING -> "enter a value";
      case GIVEN -> step.formula().isEmpty() ? "input" : step.formula() + ", input";
      case OPENED -> "from another table";
      case DEFAULT -> step.formula() + ", default";
      case WORKED_OUT, INHERITED, ROWS -> step.formula();
    };
  }

  private static String changed(Derivation step) {
    if (step.override() != null) {
      return "entered; the formula gives " + step.override().insteadShown().text();
    }
    return step.changed() == null
        ? ""
        : "from %s (%s) because %s"
            .formatted(
                step.changed().from(), step.changed().fromAt().place(), step.changed().because());
  }

  private static void text(int row, int column, String words, List<SheetCell> cells) {
    if (!words.isEmpty()) {
      cells.add(
          new SheetCell(
              row, column, new CellContent.Words(words), Look.NOTE, NumberFormats.TEXT, ""));
    }
  }
}
