package org.battenbook.tolerance;

import java.util.Optional;
import org.battenbook.check.Need;
import org.battenbook.check.Need.Reach;
import org.battenbook.check.Target;
import org.battenbook.check.TargetVisitor;

/** The place that a formula of one row needs in order to read a target. */
record TargetNeed() implements TargetVisitor<Optional<Need>> {
  @Override
  public Optional<Need> here(Target.Here here) {
    Reach reach = here.place().table() == null ? Reach.WHOLE : Reach.SAME_ROW;
    return Optional.of(new Need(here.place(), reach));
  }

  @Override
  public Optional<Need> above(Target.Above above) {
    return Optional.of(new Need(above.column(), Reach.ROW_ABOVE));
  }

  @Override
  public Optional<Need> outer(Target.Outer outer) {
    return Optional.of(new Need(outer.column(), Reach.WHOLE));
  }

  @Override
  public Optional<Need> outerRow(Target.OuterRow outerRow) {
    return Optional.empty();
  }

  @Override
  public Optional<Need> parameter(Target.Parameter parameter) {
    return Optional.empty();
  }

  /** What the replaced formulas need is not told by the target. */
  @Override
  public Optional<Need> inherited(Target.Inherited inherited) {
    return Optional.empty();
  }

  @Override
  public Optional<Need> setting(Target.Setting setting) {
    return Optional.empty();
  }
}
