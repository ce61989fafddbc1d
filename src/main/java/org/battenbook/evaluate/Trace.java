package org.battenbook.evaluate;

import java.util.List;
import java.util.Objects;
import java.util.function.BiPredicate;
import org.battenbook.bind.Spot;
import org.battenbook.check.CheckedFormula;
import org.battenbook.operation.Operation;
import org.battenbook.syntax.Expression;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * One formula, run again for one row, with the value of each of its nodes. A fill keeps none of
 * these: formulas are pure, so running one again shows how its value came about.
 */
public final class Trace {
  private final CheckedFormula formula;
  private final @Nullable Value[] slots;
  private final ReadLog reads;

  private Trace(CheckedFormula formula, @Nullable Value[] slots, ReadLog reads) {
    this.formula = formula;
    this.slots = slots;
    this.reads = reads;
  }

  /** The formula that decides a spot, run again; absent where a written value or nothing does. */
  public static @Nullable Trace of(Results results, Spot spot) {
    return of(results, spot, null);
  }

  /** The same, with what it {@link #reads}. */
  public static @Nullable Trace reading(Results results, Spot spot) {
    return of(results, spot, new ReadLog());
  }

  private static @Nullable Trace of(Results results, Spot spot, @Nullable ReadLog log) {
    CheckedFormula formula = results.decisions().formula(spot);
    return formula == null
        ? null
        : run(results, formula, node(results, spot, formula), spot.row(), log);
  }

  /** The formula of a cell is compiled by itself: its own name means what the cell had before. */
  private static FormulaNode node(Results results, Spot spot, CheckedFormula formula) {
    FormulaNode own = results.program().compiled(spot.place()).ownFormula(spot.row(), results);
    return own == null
        ? FormulaCompiler.counted(spot.place(), formula, results.program().compile(formula))
        : own;
  }

  /** The formula of a layer of a spot's place, with what it reads; absent where it has none. */
  public static @Nullable Trace ofLayer(Results results, Spot spot, int layer) {
    CheckedFormula formula =
        results.program().book().place(spot.place()).layers().get(layer).formula();
    return formula == null
        ? null
        : run(results, formula, results.program().compile(formula), spot.row(), new ReadLog());
  }

  /** What the column's formula gives in a row whose cell was filled in by hand. */
  public static @Nullable Value withoutCell(Results results, Spot spot) {
    CheckedFormula formula = results.program().book().place(spot.place()).formula();
    return formula == null ? null : of(results, formula, spot.row()).value();
  }

  /** A formula run for a row, counted from 0. */
  public static Trace of(Results results, CheckedFormula formula, int row) {
    return run(results, formula, results.program().compile(formula), row, null);
  }

  private static Trace run(
      Results results, CheckedFormula formula, FormulaNode node, int row, @Nullable ReadLog log) {
    @Nullable Value[] slots = new @Nullable Value[formula.formula().nodeCount()];
    node.run(Frame.traced(results, row, slots, log));
    return new Trace(formula, slots, log == null ? new ReadLog() : log);
  }

  /**
   * The value of a part of an aggregate in one of the rows it goes through.
   *
   * @param inner the row gone through
   * @param outer the row at hand
   */
  public static Value innerValue(
      Results results, CheckedFormula formula, Expression part, int inner, int outer) {
    Frame around = Frame.atRow(results, outer);
    Frame frame = around.inner();
    frame.row = inner;
    return results.program().compile(formula, part).run(frame);
  }

  /**
   * Whether a condition holds for every operation that works a spot out, those in functions and
   * aggregates included.
   */
  public static boolean every(
      Results results, Spot spot, BiPredicate<Operation, List<Value>> holds) {
    CheckedFormula formula = results.decisions().formula(spot);
    boolean[] failed = {false};
    if (formula != null) {
      Watch watch =
          new Watch() {
            @Override
            public void applied(Operation operation, List<Value> operands) {
              failed[0] |= !holds.test(operation, operands);
            }
          };
      node(results, spot, formula).run(Frame.watched(results, spot.row(), watch));
    }
    return !failed[0];
  }

  /** The value of the whole. */
  public Value value() {
    return Objects.requireNonNull(value(formula.expression()));
  }

  /** What the run read; empty where that was not asked for. */
  public ReadLog reads() {
    return reads;
  }

  public CheckedFormula formula() {
    return formula;
  }

  /** The value of a node; absent where it was not worked out, in a branch not taken. */
  public @Nullable Value value(Expression node) {
    return slots[node.id()];
  }
}
