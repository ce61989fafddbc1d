package org.battenbook.evaluate;

/** Steps between frames. The check has made sure that they exist. */
final class Frames {
  private Frames() {}

  /** The frame around an aggregate. */
  static Frame outer(Frame frame) {
    if (frame.outer == null) {
      throw new IllegalStateException("'this' outside of an aggregate passed the check");
    }
    return frame.outer;
  }
}
