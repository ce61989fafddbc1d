package org.battenbook.workbook;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.battenbook.book.Column;
import org.battenbook.book.PlanRole;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.PlanTable;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.number.Rational;
import org.battenbook.syntax.PlanSection.Cutting;

/** A plan of a filled workbook, read from the tables that it fills. */
public final class FilledPlan {
  private final Filled filled;
  private final PlanStatement plan;

  /** Rows of its tables by the rows that they hold, made once for each column. */
  private final Map<Held, Map<Integer, List<FilledRow>>> held = new ConcurrentHashMap<>();

  private record Held(PlanTable table, String column) {}

  FilledPlan(Filled filled, PlanStatement plan) {
    this.filled = filled;
    this.plan = plan;
  }

  public String name() {
    return plan.name().text();
  }

  /** Whether it cuts sticks; else it cuts sheets. */
  public boolean isOfSticks() {
    return plan.cutting() == Cutting.STICKS;
  }

  /** As the workbook states it. */
  public PlanStatement statement() {
    return plan;
  }

  /** Whether the plan is not made yet. It has no rows until then. */
  public boolean isPending() {
    return filled.results().pending().contains(plan);
  }

  /** What is cut from each material, in the order in which parts ask for it. */
  public List<PlannedMaterial> materials() {
    return rows(PlanTable.TOTALS).stream().map(total -> new PlannedMaterial(this, total)).toList();
  }

  /** The stock that it takes. */
  public List<TakenStock> stock() {
    return allStock().stream().filter(stock -> stock.taken() > 0).toList();
  }

  /** All stock that it may take from. */
  public List<TakenStock> allStock() {
    PlanTable pieces = PlanTable.ofTaken(plan.cutting());
    return FilledRow.of(filled, plan.stock().table().key()).stream()
        .map(row -> new TakenStock(plan.stock(), row, holding(row, pieces, "stock").size()))
        .toList();
  }

  /** Its requirements that do not hold. */
  public List<Verdict> broken() {
    List<Rule> rules =
        PlanTable.of(plan.cutting()).stream()
            .map(table -> filled.book().table(plan.table(table)))
            .flatMap(Stream::ofNullable)
            .map(Table::rules)
            .flatMap(List::stream)
            .toList();
    return filled.requirements().stream()
        .filter(verdict -> verdict.isNo() && rules.contains(verdict.rule()))
        .toList();
  }

  /** The rows of one of its tables that hold a row in a column. */
  List<FilledRow> holding(FilledRow row, PlanTable table, String column) {
    return held.computeIfAbsent(
            new Held(table, column), one -> FilledRow.byHeld(rows(table), column))
        .getOrDefault(row.index(), List.of());
  }

  List<FilledRow> rows(PlanTable table) {
    return FilledRow.of(filled, plan.table(table));
  }

  /**
   * Whether it takes the cheapest of a material. It does where any stock of it has a price, and
   * where the plan names no price and counts pieces of stock. Else it takes the least size.
   */
  boolean goesByPrice(String material) {
    Column price = plan.stock().column(PlanRole.PRICE);
    if (price == null) {
      return true;
    }
    return FilledRow.of(filled, plan.stock().table().key()).stream()
        .filter(stock -> isOf(material, stock))
        .map(stock -> stock.value(price).exactNumber().orElse(Rational.ZERO))
        .anyMatch(number -> number.signum() > 0);
  }

  private boolean isOf(String material, FilledRow stock) {
    Column column = plan.stock().column(PlanRole.MATERIAL);
    return column == null || stock.value(column).exact().equals(material);
  }
}
