package org.battenbook.unit;

import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.battenbook.number.Rational;
import org.jspecify.annotations.Nullable;

/**
 * The forms that a workbook shows its quantities in where nothing else is said, made from its
 * {@code lengths in} form. Inch lengths bring lb, in^2, in^3 and degF with them, metric ones kg,
 * m^2, m^3 and K; what is counted per length is per foot or per metre, as prices and densities are
 * quoted.
 */
public final class Forms {
  private static final Set<Unit> METRIC = Set.of(Units.MILLIMETRE, Units.CENTIMETRE, Units.METRE);

  private final Form lengths;
  private final Map<Dimension, Form> made = new ConcurrentHashMap<>();

  private Forms(Form lengths) {
    this.lengths = lengths;
  }

  /**
   * The forms of a workbook.
   *
   * @throws IllegalArgumentException if the form is not one of lengths
   */
  public static Forms of(Form lengths) {
    if (!lengths.unit().dimension().equals(Dimension.LENGTH)) {
      throw new IllegalArgumentException(lengths.unit().symbol() + " does not measure lengths");
    }
    return new Forms(lengths);
  }

  /** Whether its lengths are in millimeters, centimeters or meters. */
  public boolean isMetric() {
    return METRIC.contains(lengths.unit());
  }

  /** The form for a dimension. Money is shown to the minor digits of its currency. */
  public Form form(Dimension dimension) {
    return dimension.equals(Dimension.LENGTH)
        ? lengths
        : made.computeIfAbsent(dimension, this::make);
  }

  private Form make(Dimension dimension) {
    return Form.ofUnit(dimension.unit(this::preferred), inchStep());
  }

  private Unit preferred(Base base, int power) {
    boolean metric = isMetric();
    if (base.equals(Base.LENGTH)) {
      return metric ? Units.METRE : power < 0 ? Units.FOOT : Units.INCH;
    }
    if (base.equals(Base.MASS)) {
      return metric ? Units.KILOGRAM : Units.POUND;
    }
    if (base.equals(Base.TEMPERATURE_DIFFERENCE)) {
      return metric ? Units.KELVIN : Units.FAHRENHEIT;
    }
    return base.unit();
  }

  /**
   * The form that a line asks for. Feet and inches without a step take the workbook's own inch
   * step.
   *
   * @param step in the unit; null where only a unit is named
   * @param decimal whether the step is written as a decimal
   * @throws IllegalArgumentException as {@link Form#of}
   */
  public Form shownAs(@Nullable Rational step, boolean decimal, Unit unit) {
    return step == null ? Form.ofUnit(unit, inchStep()) : Form.of(step, decimal, unit);
  }

  /** The step of the workbook's lengths if those are fractions of an inch, else 1/16. */
  private Rational inchStep() {
    Rational step = lengths.step();
    boolean fractions = !lengths.isDecimal() && !isMetric();
    return step == null || !fractions ? Form.SIXTEENTH : step.times(lengths.unit().factor());
  }

  /** The quantity in the form for its dimension. */
  public Shown show(Quantity quantity) {
    return form(quantity.dimension()).show(quantity);
  }
}
