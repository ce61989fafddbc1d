package org.battenbook.workbook;

import java.util.List;
import org.battenbook.book.PlanTable;
import org.battenbook.number.Rational;

/** What a plan cuts from one material. */
public final class PlannedMaterial {
  private final FilledPlan plan;
  private final FilledRow total;

  PlannedMaterial(FilledPlan plan, FilledRow total) {
    this.plan = plan;
    this.total = total;
  }

  /**
   * A stop of the saw, with the parts that are cut at it.
   *
   * @param row with its {@code length}
   */
  public record Stop(FilledRow row, List<FilledRow> cuts) {}

  /**
   * A stick or a sheet, and what it is cut into; sticks have only cuts.
   *
   * @param row with its {@code stock}
   * @param pieces each where it lies on its sheet
   * @param cuts in their order
   * @param offcuts what is left of its sheet
   */
  public record Piece(
      FilledRow row, List<FilledRow> pieces, List<FilledRow> cuts, List<FilledRow> offcuts) {}

  /**
   * A quantity that a plan keeps small.
   *
   * @param unit the base unit; empty for a count
   */
  public record Measure(Rational number, String unit) {}

  public String name() {
    return total.name();
  }

  /** The material's row among the totals of its plan. */
  public FilledRow total() {
    return total;
  }

  /** Whether no cheaper plan exists. */
  public boolean isProven() {
    return total.isYes("proven");
  }

  /**
   * What the plan takes beside offcuts of earlier jobs: its cost, where any stock of the material
   * has a price; else its size; or its number, where the plan names no price.
   */
  public Measure used() {
    FilledValue value = measured();
    return new Measure(number(value), value.unit());
  }

  /** The lower bound: no plan takes less. */
  public Measure bound() {
    Measure used = used();
    return new Measure(used.number().times(number(total.value("bound share"))), used.unit());
  }

  private FilledValue measured() {
    String size = plan.isOfSticks() ? "total length" : "total area";
    return total.value(plan.goesByPrice(name()) ? "price" : size);
  }

  private static Rational number(FilledValue value) {
    return value.exactNumber().orElse(Rational.ZERO);
  }

  /** The stops of the saw, the longest first; none for sheets. */
  public List<Stop> stops() {
    return ofThis(PlanTable.STOPS).stream()
        .map(stop -> new Stop(stop, plan.holding(stop, PlanTable.CUTS, "stop")))
        .toList();
  }

  /** The number of stops without merging: as many as the parts have lengths. */
  public int lengths() {
    return (int)
        ofThis(PlanTable.CUTS).stream()
            .map(cut -> cut.number("length").orElseThrow().minus(longer(cut)))
            .distinct()
            .count();
  }

  /** The cuts that come out longer, since they share the stop of another part. */
  public List<FilledRow> lengthened() {
    return plan.isOfSticks()
        ? ofThis(PlanTable.CUTS).stream().filter(cut -> longer(cut).signum() > 0).toList()
        : List.of();
  }

  private static Rational longer(FilledRow cut) {
    return cut.number("longer by").orElse(Rational.ZERO);
  }

  /** The sticks or sheets that are taken, each with its cuts. */
  public List<Piece> taken() {
    return plan.isOfSticks() ? sticks() : sheets();
  }

  private List<Piece> sticks() {
    return ofThis(PlanTable.STICKS).stream()
        .map(
            stick ->
                new Piece(
                    stick, List.of(), plan.holding(stick, PlanTable.CUTS, "stick"), List.of()))
        .toList();
  }

  private List<Piece> sheets() {
    return ofThis(PlanTable.SHEETS).stream()
        .map(
            sheet ->
                new Piece(
                    sheet,
                    plan.holding(sheet, PlanTable.LAYOUT, "sheet"),
                    plan.holding(sheet, PlanTable.CUTS, "sheet"),
                    plan.holding(sheet, PlanTable.OFFCUTS, "sheet")))
        .toList();
  }

  private List<FilledRow> ofThis(PlanTable table) {
    return plan.holding(total, table, "material");
  }

  @Override
  public String toString() {
    return plan.name() + ": " + name();
  }
}
