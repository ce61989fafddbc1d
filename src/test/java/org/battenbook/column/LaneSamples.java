package org.battenbook.column;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import org.battenbook.number.Approximate;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.Samples;

/** Lanes of every form, with numbers as they occur and at the edges of overflow. */
final class LaneSamples {
  final Samples samples = new Samples();
  private final Random random = samples.random();

  int anyRows() {
    return random.nextInt(3) == 0 ? 1 + random.nextInt(3) : 1 + random.nextInt(90);
  }

  NumberLane any(int rows) {
    List<IntFunction<NumberLane>> forms =
        List.of(
            this::lengths,
            this::edges,
            this::ratios,
            this::edgeRatios,
            this::wides,
            this::reals,
            this::constant);
    return forms.get(random.nextInt(forms.size())).apply(rows);
  }

  /** Of numbers greater than zero, among them approximate ones. */
  NumberLane anySteps(int rows) {
    NumberLane lane = any(rows).abs();
    Constant one = new Constant(Rational.of(1, 16), rows);
    return one.orElse(lane.zeroRows(), lane);
  }

  NumberLane lengths(int rows) {
    return NumberLane.of(samples(rows, row -> samples.anyLength()));
  }

  LongLane edges(int rows) {
    long[] ticks = new long[rows];
    for (int row = 0; row < rows; row++) {
      ticks[row] = Math.max(samples.anyLong(), -Long.MAX_VALUE);
    }
    return new LongLane(ticks, anyTick(), Long.MAX_VALUE).tight();
  }

  NumberLane ratios(int rows) {
    return lengths(rows).dividedBy(nonZero(lengths(rows)));
  }

  NumberLane edgeRatios(int rows) {
    return edges(rows).dividedBy(nonZero(edges(rows)));
  }

  private NumberLane nonZero(NumberLane lane) {
    return new Constant(Rational.of(3, 8), lane.rows()).orElse(lane.zeroRows(), lane);
  }

  WideLane wides(int rows) {
    long[] high = new long[rows];
    long[] low = new long[rows];
    int shift = random.nextInt(62);
    BigInteger most = BigInteger.ZERO;
    for (int row = 0; row < rows; row++) {
      high[row] = samples.anyLong() >> (2 + shift);
      low[row] = samples.anyLong();
      WideLane one =
          new WideLane(
              new long[] {high[row]}, new long[] {low[row]}, Rational.ONE, BigInteger.ZERO);
      most = most.max(one.at(0).numerator().abs());
    }
    return new WideLane(high, low, anyTick(), most);
  }

  NumberLane reals(int rows) {
    return new RealLane(
        samples(
            rows,
            row ->
                random.nextInt(4) == 0
                    ? samples.anyRational()
                    : new Approximate(samples.anyLength().toNearestDouble(), 1e-12)));
  }

  NumberLane constant(int rows) {
    Real number =
        switch (random.nextInt(4)) {
          case 0 -> Rational.of(random.nextInt(3) - 1L);
          case 1 -> samples.anyRational();
          case 2 -> new Approximate(random.nextInt(100) / 7.0, 1e-12);
          default -> samples.anyLength();
        };
    return new Constant(number, rows);
  }

  BitLane bits(int rows) {
    return BitLane.of(rows, row -> random.nextBoolean());
  }

  private Rational anyTick() {
    List<Rational> usual =
        List.of(
            Rational.ONE,
            Rational.of(1, 16),
            Rational.of(5, 127),
            Rational.of(1, 2032),
            Rational.of(100_000_000, 45_359_237));
    return random.nextInt(4) == 0
        ? samples.anyRationalButZero().abs()
        : usual.get(random.nextInt(usual.size()));
  }

  private static Real[] samples(int rows, IntFunction<Real> sample) {
    Real[] numbers = new Real[rows];
    for (int row = 0; row < rows; row++) {
      numbers[row] = sample.apply(row);
    }
    return numbers;
  }
}
