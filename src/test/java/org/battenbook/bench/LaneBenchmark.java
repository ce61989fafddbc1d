package org.battenbook.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import org.battenbook.column.BitLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.battenbook.column.Relation;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.number.Rounding;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a kernel takes for each row of a full chunk of mixed inches and millimetres. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 8, time = 1)
@Measurement(iterations = 5, time = 1)
@OperationsPerInvocation(Lane.CHUNK)
public class LaneBenchmark {
  private static final Rational SIXTEENTH = Rational.of(1, 16);

  private final Random random = new Random(1);
  private final NumberLane mixed =
      lane(row -> row % 2 == 0 ? millimetres(200 + random.nextInt(400)) : sixteenths(random));
  private final NumberLane sixteenths = lane(row -> sixteenths(random));
  private final NumberLane counts = lane(row -> Rational.of(1 + random.nextInt(9)));
  private final NumberLane step = NumberLane.constant(SIXTEENTH, Lane.CHUNK);
  private final NumberLane third = NumberLane.constant(Rational.of(2, 3), Lane.CHUNK);
  private final NumberLane eighth = NumberLane.constant(Rational.of(1, 8), Lane.CHUNK);
  private final NumberLane wide = mixed.times(mixed).times(mixed).times(mixed).times(mixed);
  private final BitLane wider = mixed.is(Relation.GREATER, sixteenths);

  private static NumberLane lane(IntFunction<Real> number) {
    Real[] numbers = new Real[Lane.CHUNK];
    for (int row = 0; row < numbers.length; row++) {
      numbers[row] = number.apply(row);
    }
    return NumberLane.of(numbers);
  }

  private static Rational sixteenths(Random random) {
    return Rational.of(80 + random.nextInt(400), 16);
  }

  private static Rational millimetres(long count) {
    return Rational.of(5 * count, 127);
  }

  @Benchmark
  public Object sum_in_one_tick() {
    return mixed.plus(mixed);
  }

  @Benchmark
  public Object sum_in_two_ticks() {
    return mixed.plus(sixteenths);
  }

  @Benchmark
  public Object sum_with_a_constant() {
    return mixed.plus(eighth);
  }

  @Benchmark
  public Object product_with_a_constant() {
    return mixed.times(third);
  }

  @Benchmark
  public Object product() {
    return mixed.times(counts);
  }

  @Benchmark
  public Object rounding_up() {
    return mixed.rounded(Rounding.UP, step);
  }

  @Benchmark
  public Object rounding_evenly() {
    return mixed.rounded(Rounding.EVENLY, step);
  }

  @Benchmark
  public Object division_rounded_up() {
    return mixed.dividedBy(counts).rounded(Rounding.UP, step);
  }

  @Benchmark
  public Object comparison() {
    return mixed.is(Relation.GREATER, sixteenths);
  }

  @Benchmark
  public Object choice() {
    return mixed.orElse(wider, sixteenths);
  }

  @Benchmark
  public Object lesser() {
    return mixed.least(sixteenths);
  }

  @Benchmark
  public Object total() {
    return mixed.sum(null);
  }

  @Benchmark
  public Object total_where() {
    return mixed.sum(wider);
  }

  @Benchmark
  public Object wide_sum() {
    return wide.plus(wide);
  }

  @Benchmark
  public Object wide_rounding_up() {
    return wide.rounded(Rounding.UP, step);
  }
}
