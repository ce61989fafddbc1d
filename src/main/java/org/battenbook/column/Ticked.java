package org.battenbook.column;

import org.battenbook.number.Rational;

/** A lane whose numbers are counted in ticks of one size. */
interface Ticked {
  /** What one count stands for; greater than zero. */
  Rational tick();

  /** Whether all its counts are known to be zero. */
  boolean isZero();
}
