package org.battenbook.cutting;

import java.util.List;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlannedRows;
import org.battenbook.number.Rational;
import org.battenbook.plan.Sheet;
import org.battenbook.plan.SheetJob;
import org.battenbook.plan.SheetPart;
import org.battenbook.plan.SheetPlan;
import org.battenbook.unit.Dimension;

/** Writes sheets, their pieces, cuts and offcuts as rows. */
final class SheetRows implements PlanRows<SheetJob, SheetPlan> {
  private final PlanStatement plan;
  private final TotalRows totals;
  private final RowTexts sheets;
  private final RowTexts pieces;
  private final RowTexts cuts;
  private final RowTexts offcuts;

  SheetRows(PlanStatement plan) {
    this.plan = plan;
    this.totals = new TotalRows(plan, Dimension.AREA);
    this.sheets = new RowTexts(plan.table("sheets"));
    this.pieces = new RowTexts(plan.table("pieces"));
    this.cuts = new RowTexts(plan.table("cuts"));
    this.offcuts = new RowTexts(plan.table("offcuts"));
  }

  @Override
  public TotalRows totals() {
    return totals;
  }

  @Override
  public List<PlannedRows> rows() {
    return List.of(totals.rows(), sheets.rows(), pieces.rows(), cuts.rows(), offcuts.rows());
  }

  @Override
  public void add(Order<SheetJob, SheetPlan> order, SheetPlan planned, Remarks remarks)
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
      Order<SheetJob, SheetPlan> order, SheetPart part, Remarks remarks) {
    SheetJob job = order.request().orElseThrow().job();
    boolean enough =
        job.stocks().stream().anyMatch(one -> one.onHand().isEmpty() && one.holds(part));
    if (enough && job.stages().isPresent()) {
      int rounds = job.stages().getAsInt();
      remarks.refused(
          order.called(part.label()),
          "no sheet has room for it in %d round%s of parallel cuts: allow more"
              .formatted(rounds, rounds == 1 ? "" : "s"));
    } else {
      remarks.missing(order.called(part.label()), part.count());
    }
  }

  private SheetRows drawn(Order<SheetJob, SheetPlan> order, SheetPlan planned) throws NotPlannable {
    SheetRows drawn = new SheetRows(plan);
    int number = 0;
    for (Sheet sheet : planned.sheets()) {
      String name = order.material() + ": " + ++number;
      drawn.sheets.add(
          RowTexts.text(name),
          RowTexts.text(order.material()),
          RowTexts.text(sheet.stock().label()));
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

  private void addCuts(String sheet, Sheet cut) throws NotPlannable {
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

  private void addOffcuts(String sheet, Sheet cut) throws NotPlannable {
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

  private static String length(Rational length) throws NotPlannable {
    if (!Size.isWritable(length)) {
      throw Size.tooManyDigits("the place of a cut", "all sizes");
    }
    return Size.length(length);
  }
}
