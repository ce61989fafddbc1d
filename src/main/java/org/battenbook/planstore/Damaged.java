package org.battenbook.planstore;

/** Bytes that hold no plan of the job. */
final class Damaged extends Exception {
  private static final long serialVersionUID = 1;

  Damaged(String what) {
    super(what);
  }

  static void unless(boolean holds, String what) throws Damaged {
    if (!holds) {
      throw new Damaged(what);
    }
  }
}
