package org.battenbook.plan.sheet;

import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/** What is cut off each edge of a sheet first, the cut included; none is negative. */
public record SheetTrims(Rational left, Rational right, Rational top, Rational bottom) {
  /** The sheet is used up to its edges. */
  public static final SheetTrims NONE =
      new SheetTrims(Rational.ZERO, Rational.ZERO, Rational.ZERO, Rational.ZERO);

  public SheetTrims {
    boolean negative =
        left.signum() < 0 || right.signum() < 0 || top.signum() < 0 || bottom.signum() < 0;
    Refusal.unless(!negative, "a trim of a sheet is below zero: correct it, or say 0");
  }
}
