package org.battenbook.unit;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What a number measures: a product of whole powers of length, mass, time, angle, temperature
 * difference and the currencies. Counts and ratios measure nothing: {@link #NONE}. Each currency is
 * a dimension of its own.
 */
public final class Dimension {
  /** What ISO 4217 has for money of no currency: standards, read by themselves, name none. */
  public static final String NO_CURRENCY = "XXX";

  public static final Dimension NONE = new Dimension(new TreeMap<>());
  public static final Dimension LENGTH = of(Base.LENGTH);
  public static final Dimension AREA = LENGTH.pow(2);
  public static final Dimension VOLUME = LENGTH.pow(3);
  public static final Dimension MASS = of(Base.MASS);
  public static final Dimension ANGLE = of(Base.ANGLE);
  public static final Dimension TIME = of(Base.TIME);
  public static final Dimension TEMPERATURE_DIFFERENCE = of(Base.TEMPERATURE_DIFFERENCE);

  /** No zero powers, so that equal dimensions have equal maps. */
  private final SortedMap<Base, Integer> powers;

  private Dimension(SortedMap<Base, Integer> powers) {
    this.powers = Collections.unmodifiableSortedMap(powers);
  }

  static Dimension of(Base base) {
    return new Dimension(new TreeMap<>(Map.of(base, 1)));
  }

  /**
   * Money of one currency.
   *
   * @param currencyCode an ISO 4217 code, {@code USD}
   */
  public static Dimension money(String currencyCode) {
    return of(Base.money(currencyCode));
  }

  /**
   * The product.
   *
   * @throws ArithmeticException if a power does not fit an int
   */
  public Dimension times(Dimension that) {
    SortedMap<Base, Integer> product = new TreeMap<>(powers);
    that.powers.forEach((base, power) -> product.merge(base, power, Dimension::sumUnlessZero));
    return new Dimension(product);
  }

  private static @Nullable Integer sumUnlessZero(Integer a, Integer b) {
    int sum = Math.addExact(a, b);
    return sum == 0 ? null : sum;
  }

  public Dimension dividedBy(Dimension that) {
    return times(that.pow(-1));
  }

  /**
   * This dimension to a whole power.
   *
   * @throws ArithmeticException if a power does not fit an int
   */
  public Dimension pow(int power) {
    return power == 0 ? NONE : withPowers(each -> Math.multiplyExact(each, power));
  }

  /** The dimension whose power this is; empty unless all powers divide wholly. */
  public Optional<Dimension> root(int root) {
    return powers.values().stream().allMatch(power -> power % root == 0)
        ? Optional.of(withPowers(power -> power / root))
        : Optional.empty();
  }

  private Dimension withPowers(IntUnaryOperator change) {
    SortedMap<Base, Integer> changed = new TreeMap<>();
    powers.forEach((base, power) -> changed.put(base, change.applyAsInt(power)));
    return new Dimension(changed);
  }

  /** Whether it is that of counts and ratios. */
  public boolean isNone() {
    return powers.isEmpty();
  }

  /** Whether it is money of one currency and nothing else. */
  public boolean isMoney() {
    return currency().filter(code -> equals(money(code))).isPresent();
  }

  /** The first currency that takes part in it. */
  public Optional<String> currency() {
    return powers.keySet().stream().filter(Base::isMoney).map(Base::symbol).findFirst();
  }

  /**
   * In words, with an article: {@code a length}, {@code an area}, {@code a plain number}, {@code
   * money in USD}, {@code money in USD per length}, {@code a mass per volume}.
   */
  public String words() {
    String above = words(power -> power > 0, " times ", "");
    String below = words(power -> power < 0, " per ", " per ");
    return (above.isEmpty() ? "a plain number" : withArticle(above)) + below;
  }

  private String words(IntPredicate wanted, String between, String before) {
    return powers.entrySet().stream()
        .filter(part -> wanted.test(part.getValue()))
        .map(part -> part.getKey().words(Math.abs(part.getValue())))
        .reduce((left, right) -> left + between + right)
        .map(words -> before + words)
        .orElse("");
  }

  private static String withArticle(String noun) {
    if (noun.startsWith("money")) {
      return noun;
    }
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  /**
   * The unit that its numbers are kept in: {@code in}, {@code in^2}, {@code lb/in^3}, {@code
   * USD/in}; empty for plain numbers.
   */
  public String baseSymbol() {
    return baseUnit().symbol();
  }

  /** The unit that its numbers are kept in. */
  public Unit baseUnit() {
    return unit((base, power) -> base.unit());
  }

  /** A unit of this dimension, put together from one unit for each base and its power. */
  Unit unit(BiFunction<Base, Integer, Unit> choice) {
    return UnitPower.product(
        powers.entrySet().stream()
            .map(
                part ->
                    new UnitPower(choice.apply(part.getKey(), part.getValue()), part.getValue()))
            .toList());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Dimension that && powers.equals(that.powers);
  }

  @Override
  public int hashCode() {
    return powers.hashCode();
  }

  /** The base unit's symbol, {@code 1} for plain numbers. */
  @Override
  public String toString() {
    return isNone() ? "1" : baseSymbol();
  }
}
