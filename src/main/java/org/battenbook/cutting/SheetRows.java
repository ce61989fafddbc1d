package org.battenbook.cutting;

import java.util.List;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlanTable;
import org.battenbook.number.Rational;
import org.battenbook.plan.sheet.Sheet;
import org.battenbook.plan.sheet.SheetJob;
import org.battenbook.plan.sheet.SheetPart;
import org.battenbook.plan.sheet.SheetPlan;
import org.battenbook.unit.Dimension;
import org.battenbook.value.Value;

/** Writes sheets, their pieces, cuts and offcuts as rows. */
final class SheetRows implements PlanRows<SheetJob, SheetPlan> {
  private final PlanStatement plan;
  private final TotalRows totals;
  private final TableRows sheets;
  private final TableRows pieces;
  private final TableRows cuts;
  private final TableRows offcuts;

  SheetRows(PlanStatement plan) {
    this.plan = plan;
    this.totals = new TotalRows(plan, Dimension.AREA);
    this.sheets = new TableRows(plan.table(PlanTable.SHEETS));
    this.pieces = new TableRows(plan.table(PlanTable.LAYOUT));
    this.cuts = new TableRows(plan.table(PlanTable.CUTS));
    this.offcuts = new TableRows(plan.table(PlanTable.OFFCUTS));
  }

  @Override
  public TotalRows totals() {
    return totals;
  }

  @Override
  public List<TableRows> tables() {
    return List.of(totals.rows(), sheets, pieces, cuts, offcuts);
  }

  @Override
  public void add(MaterialOrder<SheetJob, SheetPlan> order, SheetPlan planned, Remarks remarks)
      throws NotPlannable {
    SheetRows drawn = drawn(order, planned);
    planned.tooLarge().forEach(part -> remarks.tooLarge(order.called(part.label())));
    planned.missing().forEach(part -> remarkMissing(order, part, remarks));
    totals.add(order, remarks, planned.proven(), planned.used(), planned.bound());
    sheets.addAll(drawn.sheets);
    pieces.addAll(drawn.pieces);
    cuts.addAll(drawn.cuts);
    offcuts.addAll(drawn.offcuts);
  }

  /** Where there is any number of a sheet that holds a part, only rounds of cuts can be missing. */
  private static void remarkMissing(
      MaterialOrder<SheetJob, SheetPlan> order, SheetPart part, Remarks remarks) {
    SheetJob job = order.request().orElseThrow().job();
    boolean enough =
        job.stocks().stream().anyMatch(one -> one.onHand().isEmpty() && one.holds(part));
    if (enough && job.stages().isPresent()) {
      int rounds = job.stages().getAsInt();
      remarks.refused(
          order.called(part.label()),
          "no sheet fits it in %d round%s of parallel cuts; allow more rounds"
              .formatted(rounds, rounds == 1 ? "" : "s"));
    } else {
      remarks.missing(order.called(part.label()), part.count());
    }
  }

  private SheetRows drawn(MaterialOrder<SheetJob, SheetPlan> order, SheetPlan planned)
      throws NotPlannable {
    SheetRows drawn = new SheetRows(plan);
    int number = 0;
    for (Sheet sheet : planned.sheets()) {
      String name = order.material() + ": " + ++number;
      drawn.sheets.add(
          TableRows.text(name),
          TableRows.text(order.material()),
          TableRows.text(sheet.stock().label()));
      drawn.addPieces(name, sheet);
      drawn.addCuts(name, sheet);
      drawn.addOffcuts(name, sheet);
    }
    return drawn;
  }

  private void addPieces(String sheet, Sheet cut) throws NotPlannable {
    int number = 0;
    for (Sheet.Placed placed : cut.pieces()) {
      Sheet.Area area = placed.area();
      pieces.add(
          TableRows.numbered(sheet, ++number),
          TableRows.text(sheet),
          TableRows.text(placed.label()),
          length(area.left()),
          length(area.top()),
          TableRows.yes(placed.turned()),
          length(area.across()),
          length(area.down()));
    }
  }

  private void addCuts(String sheet, Sheet cut) throws NotPlannable {
    int number = 0;
    for (Sheet.Cut one : cut.cuts()) {
      boolean across = one.direction() == Sheet.Direction.ACROSS;
      cuts.add(
          TableRows.numbered(sheet, ++number),
          TableRows.text(sheet),
          TableRows.count(number),
          TableRows.text(across ? "across" : "down"),
          length(one.from()),
          length(one.panel().left()),
          length(one.panel().top()),
          length(one.panel().across()),
          length(one.panel().down()));
    }
  }

  private void addOffcuts(String sheet, Sheet cut) throws NotPlannable {
    int number = 0;
    for (Sheet.Offcut offcut : cut.offcuts()) {
      Sheet.Area area = offcut.area();
      offcuts.add(
          TableRows.numbered(sheet, ++number),
          TableRows.text(sheet),
          length(area.left()),
          length(area.top()),
          length(area.across()),
          length(area.down()),
          TableRows.yes(offcut.kept()));
    }
  }

  private static Value length(Rational length) throws NotPlannable {
    if (!DigitLimit.isWritable(length)) {
      throw DigitLimit.tooManyDigits("the place of a cut", "all sizes");
    }
    return TableRows.amount(length, Dimension.LENGTH);
  }
}
