package org.battenbook.column;

import java.util.function.BinaryOperator;
import org.battenbook.number.Real;

/** One object for every row: approximate numbers, and exact ones that fit no other lane. */
final class RealLane extends NumberLane {
  private final Real[] numbers;

  RealLane(Real[] numbers) {
    this.numbers = numbers;
  }

  /** The operation row by row, which every other kernel must equal. */
  static RealLane zip(NumberLane left, NumberLane right, BinaryOperator<Real> operation) {
    Real[] results = new Real[left.rows()];
    for (int row = 0; row < results.length; row++) {
      results[row] = operation.apply(left.at(row), right.at(row));
    }
    return new RealLane(results);
  }

  @Override
  public int rows() {
    return numbers.length;
  }

  @Override
  public Real at(int row) {
    return numbers[row];
  }

  @Override
  boolean isExact() {
    return false;
  }

  @Override
  public RealLane negate() {
    return zip(this, this, (number, same) -> number.negate());
  }

  @Override
  public RealLane abs() {
    return zip(this, this, (number, same) -> number.abs());
  }

  @Override
  public BitLane negativeRows() {
    return BitLane.of(numbers.length, row -> numbers[row].signum() < 0);
  }

  @Override
  public BitLane zeroRows() {
    return BitLane.of(numbers.length, row -> numbers[row].signum() == 0);
  }
}
