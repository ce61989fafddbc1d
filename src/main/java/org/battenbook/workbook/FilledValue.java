package org.battenbook.workbook;

import java.util.Optional;
import org.battenbook.bind.Spot;
import org.battenbook.check.CheckedFormula;
import org.battenbook.check.Decisions;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.unit.Shown;
import org.battenbook.value.ShownValue;
import org.battenbook.value.Value;

/** One value of a filled workbook, and how it is shown. */
public final class FilledValue {
  private final Decisions decided;
  private final Spot spot;
  private final Value value;

  /** Whether it is the value at its spot; else it is calculated from that. */
  private final boolean stands;

  FilledValue(Decisions decided, Spot spot, Value value) {
    this(decided, spot, value, true);
  }

  private FilledValue(Decisions decided, Spot spot, Value value, boolean stands) {
    this.decided = decided;
    this.spot = spot;
    this.value = value;
    this.stands = stands;
  }

  public Spot spot() {
    return spot;
  }

  public Value value() {
    return value;
  }

  /** Whether there is nothing to be known: its row is opened from another table. */
  public boolean staysEmpty() {
    return decided.staysEmpty(spot);
  }

  /** The name of its line or column. */
  public String name() {
    return spot.place().label();
  }

  /** As people say it: {@code top rail of "Tide chart, north"}. */
  public String words() {
    return decided.words(spot);
  }

  /** As people read it. */
  public Shown shown() {
    return stands ? decided.show(spot, value) : decided.book().showCalculated(spot.place(), value);
  }

  /**
   * In full: a whole number or a fraction of the base {@link #unit}, a decimal where it is
   * approximate; texts, yes or no and dates as they read.
   */
  public String exact() {
    return exact(value);
  }

  /** The same of any value. */
  public static String exact(Value value) {
    return value instanceof Value.Amount amount
        ? amount.quantity().number().toString()
        : ShownValue.of(value, null).text();
  }

  /** The base symbol of its dimension; empty for counts, ratios and all that is no quantity. */
  public String unit() {
    return unit(value);
  }

  /** The same of any value. */
  public static String unit(Value value) {
    return value instanceof Value.Amount amount ? amount.quantity().dimension().baseSymbol() : "";
  }

  /** Its exact number in the base {@link #unit}; empty where it has none. */
  public Optional<Rational> exactNumber() {
    return value instanceof Value.Amount amount
            && amount.quantity().number() instanceof Rational exact
        ? Optional.of(exact)
        : Optional.empty();
  }

  /** A multiple of a number, shown like it; any other value as it is. */
  FilledValue times(int count) {
    if (!(value instanceof Value.Amount amount)) {
      return this;
    }
    Quantity one = amount.quantity();
    return reckoned(new Quantity(one.number().times(Rational.of(count)), one.dimension()));
  }

  /**
   * Another quantity of its dimension, shown like this one. The value as it is, where either is no
   * quantity.
   *
   * @throws IllegalArgumentException when the other is of another dimension
   */
  public FilledValue plus(FilledValue other) {
    if (!(value instanceof Value.Amount one) || !(other.value instanceof Value.Amount more)) {
      return this;
    }
    Dimension dimension = one.quantity().dimension();
    if (!more.quantity().dimension().equals(dimension)) {
      throw new IllegalArgumentException("%s and %s have no sum".formatted(words(), other.words()));
    }
    Real sum = one.quantity().number().plus(more.quantity().number());
    return reckoned(new Quantity(sum, dimension));
  }

  private FilledValue reckoned(Quantity quantity) {
    return new FilledValue(decided, spot, new Value.Amount(quantity), false);
  }

  /** Whether it is known only to within a bound. */
  public boolean isApproximate() {
    return isApproximate(value);
  }

  /** The same of any value. */
  public static boolean isApproximate(Value value) {
    return value instanceof Value.Amount amount && !amount.quantity().number().isExact();
  }

  /** Its formula as written; empty for what is written as a value. */
  public String formula() {
    CheckedFormula formula = decided.formula(spot);
    return formula == null ? "" : formula.formula().text();
  }

  /** Where it is set, {@code frame-shop.batten:31}. */
  public String at() {
    return decided.origin(spot).place();
  }
}
