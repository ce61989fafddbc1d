package org.battenbook.plan;

/**
 * The incumbent of a search: the best packing found so far, and the highest lower bound on the cost
 * of any packing. It reports every change to the watch.
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

  /** The lower bound on the cost of any packing of all pieces, in units of cost. */
  public long bound() {
    return bound;
  }

  /** Whether the best packing is proven optimal. */
  public boolean isProven() {
    return best.isBest(bound);
  }

  /** Replaces the best packing by a better one. */
  public void improve(P better) {
    best = better;
    report();
  }

  /** Raises the bound, if it is higher than before. */
  public void raise(long to) {
    if (to > bound) {
      bound = to;
      report();
    }
  }

  private void report() {
    watch.found(units.times(best.cost()), units.times(bound));
  }
}
