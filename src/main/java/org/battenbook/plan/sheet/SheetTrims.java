package org.battenbook.plan.sheet;

import org.battenbook.number.Rational;
import org.battenbook.plan.Refusal;

/** The width to cut off each edge of a sheet first, kerf included; each is at least 0. */
public record SheetTrims(Rational left, Rational right, Rational top, Rational bottom) {
  /** No trims: the sheet is used up to its edges. */
  public static final SheetTrims NONE =
      new SheetTrims(Rational.ZERO, Rational.ZERO, Rational.ZERO, Rational.ZERO);

  public SheetTrims {
    boolean negative =
        left.signum() < 0 || right.signum() < 0 || top.signum() < 0 || bottom.signum() < 0;
    Refusal.unless(!negative, "the trims of a sheet must be at least 0");
  }
}
