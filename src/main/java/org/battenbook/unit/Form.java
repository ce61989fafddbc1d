package org.battenbook.unit;

import java.util.OptionalInt;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.Rounding;
import org.jspecify.annotations.Nullable;

/**
 * How quantities of one dimension are shown: {@code 1/16 in} as fractions, {@code 0.01 in} as
 * decimals, {@code ft} as feet and inches, {@code mm} as decimals as needed. Showing never changes
 * a value: where the form cannot hold it exactly the text is marked {@code ≈}.
 */
public final class Form {
  /** The step of inches where none is said. */
  static final Rational SIXTEENTH = Rational.of(1, 16);

  private final Unit unit;
  private final Layout layout;

  Form(Unit unit, Layout layout) {
    this.unit = unit;
    this.layout = layout;
  }

  /**
   * The form that is written so, by itself; a workbook's own step for inches is brought in by
   * {@link Forms#shownAs}.
   *
   * @param step of the last place, in the unit, greater than zero; null where only a unit is named
   * @param decimal whether the step is written as a decimal, so that decimals are wanted
   * @throws IllegalArgumentException if the step is not greater than zero, or a decimal of more
   *     than 30 places
   */
  public static Form of(@Nullable Rational step, boolean decimal, Unit unit) {
    return step == null ? ofUnit(unit, SIXTEENTH) : ofStep(step, decimal, unit);
  }

  private static Form ofStep(Rational step, boolean decimal, Unit unit) {
    if (step.signum() <= 0) {
      throw new IllegalArgumentException("the step of a shown form is greater than zero");
    }
    return new Form(unit, decimal ? Layout.DecimalSteps.of(step) : new Layout.Fractions(step));
  }

  /** The form of a unit alone, inches and feet to this step in inches. */
  static Form ofUnit(Unit unit, Rational inchStep) {
    if (unit.equals(Units.INCH)) {
      return new Form(unit, new Layout.Fractions(inchStep));
    }
    if (unit.equals(Units.FOOT)) {
      return new Form(unit, new Layout.FeetAndInches(inchStep.dividedBy(unit.factor())));
    }
    OptionalInt minorDigits = Units.minorDigits(unit.dimension());
    return new Form(
        unit,
        minorDigits.isPresent() && unit.dimension().isMoney()
            ? Layout.DecimalSteps.of(Layout.tenTo(-minorDigits.getAsInt()))
            : new Layout.FreeDecimals(minorDigits.orElse(0)));
  }

  /**
   * The quantity in this form, to the nearest step, a tie away from zero.
   *
   * @throws IllegalArgumentException if it is of another dimension
   */
  public Shown show(Quantity quantity) {
    Real number = quantity.in(unit);
    Rational value = rational(number);
    Rational nearest = layout.held(value, Rounding.NEAREST);
    boolean approximate = !number.isExact() || !nearest.equals(value);
    return new Shown((approximate ? "≈ " : "") + layout.print(nearest, unit.symbol()), approximate);
  }

  /**
   * The largest quantity in this form that is not more than this one, as a workbook would have it
   * written.
   *
   * @throws IllegalArgumentException if it is of another dimension
   */
  public String atMost(Quantity quantity) {
    Rational below = layout.held(rational(quantity.in(unit)), Rounding.DOWN);
    return layout.print(below, unit.symbol());
  }

  private static Rational rational(Real number) {
    return number instanceof Rational exact ? exact : Rational.exactly(number.toDouble());
  }

  /** The unit of the shown number; {@code ft} for feet and inches. */
  public Unit unit() {
    return unit;
  }

  /**
   * The step of the last place, in {@link #unit}; null where as many decimals as needed are shown.
   */
  public @Nullable Rational step() {
    return layout.step();
  }

  /** Whether it shows decimals, rather than fractions. */
  public boolean isDecimal() {
    return layout instanceof Layout.DecimalSteps || layout instanceof Layout.FreeDecimals;
  }

  /** Whether it shows feet with inches. */
  public boolean isFeetAndInches() {
    return layout instanceof Layout.FeetAndInches;
  }
}
