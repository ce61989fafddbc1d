package org.battenbook.derive;

import java.util.Optional;
import org.battenbook.bind.Spot;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;

/**
 * The spot that a formula of one row reads by a target; absent where it reads no place of the
 * workbook in that row.
 *
 * @param row counted from 0
 */
record SpotInRow(int row) implements TargetVisitor<Optional<Spot>> {
  @Override
  public Optional<Spot> here(Target.Here here) {
    return Optional.of(new Spot(here.place(), here.place().table() == null ? 0 : row));
  }

  @Override
  public Optional<Spot> above(Target.Above above) {
    return row > 0 ? Optional.of(new Spot(above.column(), row - 1)) : Optional.empty();
  }

  /** The row around an aggregate is another one in each aggregate. */
  @Override
  public Optional<Spot> outer(Target.Outer outer) {
    return Optional.empty();
  }

  @Override
  public Optional<Spot> outerRow(Target.OuterRow outerRow) {
    return Optional.empty();
  }

  @Override
  public Optional<Spot> parameter(Target.Parameter parameter) {
    return Optional.empty();
  }

  /** The spot itself holds the value after the change. */
  @Override
  public Optional<Spot> inherited(Target.Inherited inherited) {
    return Optional.empty();
  }

  @Override
  public Optional<Spot> setting(Target.Setting setting) {
    return Optional.empty();
  }
}
