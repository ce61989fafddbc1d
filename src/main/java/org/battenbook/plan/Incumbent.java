package org.battenbook.plan;

/**
 * The best packing that a search has found so far, and the highest bound on the cost of any. It
 * reports every change to the watch.
 */
public final class Incumbent<P extends Packing> {
  private final CommonStep units;
  private final PlanWatch watch;
  private P best;
  private long bound;

  /**
   * Begins with a first packing and a bound of 0.
   *
   * @param units of cost
   */
  public Incumbent(P first, CommonStep units, PlanWatch watch) {
    this.best = first;
    this.units = units;
    this.watch = watch;
  }

  public P best() {
    return best;
  }

  /** No packing of all pieces costs less, in units of cost. */
  public long bound() {
    return bound;
  }

  /** Whether no packing of all pieces costs less than the best. */
  public boolean isProven() {
    return best.isBest(bound);
  }

  /** Takes a better packing. */
  public void improve(P better) {
    best = better;
    tell();
  }

  /** Raises the bound, if it is higher than before. */
  public void raise(long to) {
    if (to > bound) {
      bound = to;
      tell();
    }
  }

  private void tell() {
    watch.found(units.times(best.cost()), units.times(bound));
  }
}
