package org.battenbook.evaluate;

import java.util.Arrays;
import java.util.Optional;
import org.battenbook.column.BitLane;
import org.battenbook.column.IndexLane;
import org.battenbook.column.Lane;
import org.battenbook.column.NumberLane;
import org.battenbook.value.Value;
import org.battenbook.value.ValueVisitor;
import org.jspecify.annotations.Nullable;

/** The lane that has the same value in so many rows; absent where no lane holds it. */
record RepeatedLane(int rows) implements ValueVisitor<Optional<Lane>> {

  static @Nullable Lane of(Value value, int rows) {
    return value.accept(new RepeatedLane(rows)).orElse(null);
  }

  @Override
  public Optional<Lane> amount(Value.Amount amount) {
    return Optional.of(NumberLane.constant(amount.quantity().number(), rows));
  }

  @Override
  public Optional<Lane> text(Value.Text text) {
    return Optional.empty();
  }

  @Override
  public Optional<Lane> yesNo(Value.YesNo yesNo) {
    return Optional.of(BitLane.constant(rows, yesNo.yes()));
  }

  @Override
  public Optional<Lane> day(Value.Day day) {
    return Optional.empty();
  }

  @Override
  public Optional<Lane> row(Value.Row row) {
    int[] indices = new int[rows];
    Arrays.fill(indices, row.row());
    return Optional.of(new IndexLane(indices));
  }

  @Override
  public Optional<Lane> fault(Value.Fault fault) {
    return Optional.empty();
  }

  @Override
  public Optional<Lane> waiting(Value.Waiting waiting) {
    return Optional.empty();
  }
}
