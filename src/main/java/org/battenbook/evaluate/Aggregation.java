package org.battenbook.evaluate;

import org.battenbook.column.BitLane;
import org.battenbook.column.NumberLane;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.syntax.AggregateFunction;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.jspecify.annotations.Nullable;

/** Combines many values into one, one after another. */
final class Aggregation {
  private final AggregateFunction function;
  private final Kind kind;
  private final Meter meter;
  private long count;
  private Real sum = Rational.ZERO;
  private @Nullable Value best;
  private @Nullable Value broken;

  Aggregation(AggregateFunction function, Kind kind, Meter meter) {
    this.meter = meter;
    this.function = function;
    this.kind = kind;
  }

  /** Whether a value was not known, so that no further value can change the result. */
  boolean isBroken() {
    return broken != null;
  }

  /** Adds the next value. A total over a faulty row waits: it is never partial. */
  void add(Value value) {
    if (!value.isKnown()) {
      broken = broken == null ? value : broken;
      return;
    }
    count++;
    switch (function) {
      case COUNT -> {}
      case SUM, AVERAGE -> addUp(((Value.Amount) value).quantity().number());
      case LARGEST -> best = best == null || Order.compare(value, best) > 0 ? value : best;
      case SMALLEST -> best = best == null || Order.compare(value, best) < 0 ? value : best;
    }
  }

  /**
   * Adds a whole chunk at once.
   *
   * @param chosen the rows that count; absent for all
   * @param taken their values; absent where the rows are only counted
   */
  Aggregation addAll(@Nullable BitLane chosen, @Nullable NumberLane taken, int rows) {
    count += chosen == null ? rows : chosen.count();
    if (taken == null || count == 0) {
      return this;
    }
    switch (function) {
      case COUNT -> {}
      case SUM, AVERAGE -> sum = sum.plus(taken.sum(chosen));
      case LARGEST -> best = amount(taken.at(taken.rowOfGreatest(chosen)));
      case SMALLEST -> best = amount(taken.at(taken.rowOfLeast(chosen)));
    }
    return this;
  }

  /** Adds the total of further rows. */
  void addAll(Aggregation later) {
    broken = broken == null ? later.broken : broken;
    count += later.count;
    addUp(later.sum);
    if (later.best != null) {
      boolean better =
          best == null
              || (function == AggregateFunction.LARGEST
                  ? Order.compare(later.best, best) > 0
                  : Order.compare(later.best, best) < 0);
      best = better ? later.best : best;
    }
  }

  /** Adds to the sum. A sum with too many digits makes the total a fault, as a faulty row does. */
  private void addUp(Real number) {
    try {
      sum = sum.plus(number);
      broken = broken == null ? meter.tooMuch(sum) : broken;
    } catch (ArithmeticException tooLong) {
      broken = broken == null ? tooManyDigits(tooLong) : broken;
    }
  }

  Value result() {
    if (broken != null) {
      return broken;
    }
    return switch (function) {
      case COUNT -> new Value.Amount(new Quantity(Rational.of(count), Dimension.NONE));
      case SUM -> amount(sum);
      case AVERAGE -> count == 0 ? nothing("average-of-nothing", "average") : average();
      case LARGEST -> best == null ? nothing("largest-of-nothing", "largest") : best;
      case SMALLEST -> best == null ? nothing("smallest-of-nothing", "smallest") : best;
    };
  }

  private Value average() {
    try {
      return amount(sum.dividedBy(Rational.of(count)));
    } catch (ArithmeticException tooLong) {
      return tooManyDigits(tooLong);
    }
  }

  private static Value tooManyDigits(ArithmeticException told) {
    return new Value.Fault("too-many-digits", String.valueOf(told.getMessage()));
  }

  private Value amount(Real number) {
    Dimension dimension =
        kind instanceof Kind.Measured measured ? measured.dimension() : Dimension.NONE;
    return new Value.Amount(new Quantity(number, dimension));
  }

  private static Value nothing(String code, String word) {
    return new Value.Fault(
        code, "no rows match, so there is no %s; add 'if count of … = 0'".formatted(word));
  }
}
