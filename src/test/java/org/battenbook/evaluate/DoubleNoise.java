package org.battenbook.evaluate;

import java.util.HashMap;
import java.util.Map;
import org.battenbook.bind.Spot;
import org.battenbook.check.CheckedPlace;
import org.battenbook.column.Lookup;
import org.battenbook.number.Approximate;
import org.battenbook.number.Real;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/**
 * How far the doubles of a spreadsheet may be from the exact values of a workbook: a bound that is
 * derived for each value on its own, by the standard model of floating-point arithmetic (Higham,
 * Accuracy and Stability of Numerical Algorithms, 2nd edition, sections 2.2 and 3.1).
 *
 * <p>Each formula runs again, not on exact values but on what the cells hold: a double with the
 * bound that the formula of that cell gave. Each operation adds its own rounding to what the bounds
 * of its operands come to. So a small difference of two long lengths keeps the roundings of both,
 * and a rounding to a step, whose result is exact, ends them.
 */
public final class DoubleNoise extends PassedReading {
  /**
   * By how much rounding to 15 significant digits moves a number at most, as a part of it. Apache
   * POI rounds the operands of products and quotients so, and a double is far finer.
   */
  private static final double FIFTEEN_DIGITS = 5e-15;

  /**
   * The products and quotients that a value goes through besides those of the workbook's formula.
   * It is multiplied by the factor of its unit for its cell, and divided by it where a formula
   * reads it. A factor such as 1/1728 in<sup>3</sup> or two numbers that the workbook multiplies
   * exactly make up to two more.
   */
  private static final int OF_A_CELL = 4;

  /** Told of nothing; with it, no group keeps the exact total of another run. */
  private static final Watch WATCH = new Watch() {};

  private final Slot[] slots;
  private final Map<Spot, Value> values = new HashMap<>();

  /** The noise of a workbook with these values. */
  public DoubleNoise(Results results) {
    super(results);
    this.slots = new Slot[results.program().slots().count()];
    for (CheckedPlace checked : results.program().book().places()) {
      Slot slot = results.program().slots().of(checked.place());
      slots[slot.number()] = slot;
    }
  }

  /** The value of a spot in doubles, with the bound of its noise. */
  public Value value(Spot spot) {
    return value(results.program().slots().of(spot.place()), spot.row());
  }

  @Override
  public Value line(int place) {
    return value(slots[place], 0);
  }

  @Override
  public Value cell(int place, int row) {
    return value(slots[place], row);
  }

  private Value value(Slot slot, int row) {
    Spot spot = new Spot(slot.place(), row);
    Value known = values.get(spot);
    if (known == null) {
      known = inDoubles(slot, row, results.value(spot));
      values.put(spot, known);
    }
    return known;
  }

  private Value inDoubles(Slot slot, int row, Value exact) {
    if (!(exact instanceof Value.Amount amount)) {
      return exact;
    }
    Value run = results.program().compiled(slot).value(Frame.watched(this, row, WATCH));
    Quantity quantity = run instanceof Value.Amount noisy ? noisy.quantity() : amount.quantity();
    return new Value.Amount(new Quantity(inCell(quantity.number()), quantity.dimension()));
  }

  private static Approximate inCell(Real number) {
    Approximate near = Approximate.of(number);
    double more = OF_A_CELL * FIFTEEN_DIGITS * Math.abs(near.value());
    return new Approximate(near.value(), near.bound() + more);
  }

  @Override
  public Value total(AggregateNode aggregate) {
    Value missing = missingRows(aggregate.table);
    RowList all = RowList.first(rows(aggregate.table).count());
    return missing == null ? aggregate.among(Frame.watched(this, 0, WATCH), all) : missing;
  }

  /** Which rows belong together is no matter of doubles. */
  @Override
  public Groups groups(OverRowsNode plan) {
    return results.groups(plan);
  }

  @Override
  public Meter meter() {
    return new Meter();
  }

  @Override
  public ColumnValues.Chunk chunk(int place, int chunk) {
    throw new UnsupportedOperationException("goes row by row");
  }

  @Override
  public @Nullable Lookup lookup(int place) {
    throw new UnsupportedOperationException("goes row by row");
  }
}
