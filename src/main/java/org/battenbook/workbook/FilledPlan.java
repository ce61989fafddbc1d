package org.battenbook.workbook;

import java.util.List;
import java.util.stream.Stream;
import org.battenbook.book.PlanStatement;
import org.battenbook.book.Rule;
import org.battenbook.book.Table;
import org.battenbook.syntax.PlanSection.Cutting;

/** A plan of a filled workbook, read from the tables that hold what comes of it. */
public final class FilledPlan {
  private final Filled filled;
  private final PlanStatement plan;

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

  /** What is cut from each material, in the order in which parts ask for it. */
  public List<PlannedMaterial> materials() {
    return rows("totals").stream().map(total -> new PlannedMaterial(this, total)).toList();
  }

  /** The stock that it takes, each with how much of it. */
  public List<TakenStock> stock() {
    return allStock().stream().filter(stock -> stock.taken() > 0).toList();
  }

  /** All stock that it may take, each with how much it does. */
  public List<TakenStock> allStock() {
    List<FilledRow> pieces = rows(isOfSticks() ? "sticks" : "sheets");
    return FilledRow.of(filled, plan.stock().table().key()).stream()
        .map(row -> new TakenStock(plan.stock(), row, row.heldBy(pieces, "stock").size()))
        .toList();
  }

  /** Its requirements that do not hold. */
  public List<Verdict> broken() {
    List<Rule> rules =
        Stream.of("totals", "sticks", "sheets", "stops", "pieces", "cuts", "offcuts")
            .map(what -> filled.book().table(plan.table(what)))
            .flatMap(Stream::ofNullable)
            .map(Table::rules)
            .flatMap(List::stream)
            .toList();
    return filled.requirements().stream()
        .filter(verdict -> verdict.isNo() && rules.contains(verdict.rule()))
        .toList();
  }

  List<FilledRow> rows(String what) {
    return FilledRow.of(filled, plan.table(what));
  }

  /** Whether its stock has a price. */
  boolean hasPrices() {
    return plan.stock().column("price") != null;
  }
}
