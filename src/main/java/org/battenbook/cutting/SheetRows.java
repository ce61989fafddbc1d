package org.battenbook.cutting;

import java.util.List;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.number.Rational;
import org.battenbook.plan.Sheet;
import org.battenbook.plan.SheetPlan;

/** Writes sheets, their pieces, cuts and offcuts as rows. */
final class SheetRows {
  private final RowTexts sheets;
  private final RowTexts pieces;
  private final RowTexts cuts;
  private final RowTexts offcuts;

  SheetRows(PlanStatement plan) {
    this.sheets = new RowTexts(plan.table("sheets"));
    this.pieces = new RowTexts(plan.table("pieces"));
    this.cuts = new RowTexts(plan.table("cuts"));
    this.offcuts = new RowTexts(plan.table("offcuts"));
  }

  List<PlannedRows> rows() {
    return List.of(sheets.rows(), pieces.rows(), cuts.rows(), offcuts.rows());
  }

  void add(Material material, SheetPlan planned) {
    int number = 0;
    for (Sheet sheet : planned.sheets()) {
      String name = material.name() + ": " + ++number;
      sheets.add(
          RowTexts.text(name),
          RowTexts.text(material.name()),
          RowTexts.text(sheet.stock().label()));
      addPieces(name, sheet);
      addCuts(name, sheet);
      addOffcuts(name, sheet);
    }
  }

  private void addPieces(String sheet, Sheet cut) {
    int number = 0;
    for (Sheet.Placed placed : cut.pieces()) {
      Sheet.Area area = placed.area();
      pieces.add(
          RowTexts.numbered(sheet, ++number),
          RowTexts.text(sheet),
          RowTexts.text(placed.label()),
          length(area.left()),
          length(area.top()),
          RowTexts.yes(placed.turned()),
          length(area.across()),
          length(area.down()));
    }
  }

  private void addCuts(String sheet, Sheet cut) {
    int number = 0;
    for (Sheet.Cut one : cut.cuts()) {
      boolean across = one.direction() == Sheet.Direction.ACROSS;
      cuts.add(
          RowTexts.numbered(sheet, ++number),
          RowTexts.text(sheet),
          Integer.toString(number),
          RowTexts.text(across ? "across" : "down"),
          length(one.from()),
          length(one.panel().left()),
          length(one.panel().top()),
          length(one.panel().across()),
          length(one.panel().down()));
    }
  }

  private void addOffcuts(String sheet, Sheet cut) {
    int number = 0;
    for (Sheet.Offcut offcut : cut.offcuts()) {
      Sheet.Area area = offcut.area();
      offcuts.add(
          RowTexts.numbered(sheet, ++number),
          RowTexts.text(sheet),
          length(area.left()),
          length(area.top()),
          length(area.across()),
          length(area.down()),
          RowTexts.yes(offcut.kept()));
    }
  }

  private static String length(Rational length) {
    return Size.length(length);
  }
}
