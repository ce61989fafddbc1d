package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.battenbook.plan.Effort;
import org.battenbook.plan.MaterialBound;
import org.battenbook.plan.Offers;
import org.battenbook.plan.StockBound;

/**
 * Costs below which no plan of sheets can come: by area, and by areas of sides that a dual feasible
 * function stretches, so that two halves and a bit do not fit a whole.
 *
 * <p>After S. P. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing
 * problems" (2001), and the function of M. A. Boschetti and A. Mingozzi (2003). Which functions are
 * looked at is guided by doubles; the bound itself is a sum of whole numbers.
 */
final class SheetBound {
  private static final int MOST_FUNCTIONS = 40;

  private final SheetInstance instance;
  private final long width;
  private final long height;

  /** Sides stretched so that those beside each other in {@code whole} come to {@code most}. */
  private interface DualFeasible {
    long most();

    long of(long side);
  }

  private record Plain(long whole) implements DualFeasible {
    @Override
    public long most() {
      return whole;
    }

    @Override
    public long of(long side) {
      return side;
    }
  }

  /** What is longer than all but {@code step} counts whole, what is shorter than it not at all. */
  private record Threshold(long whole, long step) implements DualFeasible {
    @Override
    public long most() {
      return whole;
    }

    @Override
    public long of(long side) {
      if (side > whole - step) {
        return whole;
      }
      return side < step ? 0 : side;
    }
  }

  /** Steps are counted: for what is longer than half, those that are no longer left beside it. */
  private record Steps(long whole, long step) implements DualFeasible {
    @Override
    public long most() {
      return 2 * (whole / step);
    }

    @Override
    public long of(long side) {
      if (2 * side > whole) {
        return 2 * (whole / step - (whole - side) / step);
      }
      return 2 * side == whole ? whole / step : 2 * (side / step);
    }
  }

  /** Both sides of each kind, stretched by one function. */
  private static final class Stretched {
    final long[] across;
    final long[] down;

    Stretched(SheetInstance instance, DualFeasible function) {
      this.across = Arrays.stream(instance.across).map(function::of).toArray();
      this.down = Arrays.stream(instance.down).map(function::of).toArray();
    }
  }

  private SheetBound(SheetInstance instance) {
    this.instance = instance;
    this.width = Arrays.stream(instance.widths).max().orElse(1);
    this.height = Arrays.stream(instance.heights).max().orElse(1);
  }

  /** A bound in units of cost, where a packing of cost {@code known} is there. */
  static long of(SheetInstance instance, long known, Effort effort) {
    if (instance.stocks() == 0 || instance.kinds() == 0) {
      return 0;
    }
    SheetBound bound = new SheetBound(instance);
    long[] areas = IntStream.range(0, instance.kinds()).mapToLong(instance::area).toArray();
    long[] sheets = IntStream.range(0, instance.stocks()).mapToLong(instance::sheetArea).toArray();
    return Math.max(bound.ofWorths(areas, sheets, known, effort), bound.ofStretched(known, effort));
  }

  /** Where pieces are worth some numbers, and a sheet holds no more than some worth of them. */
  private long ofWorths(long[] worths, long[] most, long known, Effort effort) {
    long all = 0;
    for (int kind = 0; kind < worths.length; kind++) {
      all += instance.demand[kind] * worths[kind];
    }
    Offers offers = instance.offers(most);
    long byMaterial = MaterialBound.of(all, offers);
    return known <= byMaterial
        ? byMaterial
        : Math.max(byMaterial, StockBound.of(all, offers, known, effort));
  }

  /**
   * At the pair of functions that asks for most sheets, of those looked at before it is stopped.
   */
  private long ofStretched(long known, Effort effort) {
    List<DualFeasible> overWidth = functions(width);
    List<DualFeasible> overHeight = functions(height);
    effort.spend((long) overWidth.size() * overHeight.size() * instance.kinds());
    long[] best = new long[instance.kinds()];
    long most = 1;
    double mostSheets = -1;
    List<Stretched> stretchedOverHeight =
        overHeight.stream().map(down -> new Stretched(instance, down)).toList();
    for (DualFeasible across : overWidth) {
      Stretched stretched = new Stretched(instance, across);
      for (int i = 0; i < overHeight.size() && !effort.isStopped(); i++) {
        effort.pass(2L * instance.kinds());
        DualFeasible down = overHeight.get(i);
        long[] worths = worths(stretched, stretchedOverHeight.get(i));
        double sheets = sheets(worths) / across.most() / down.most();
        if (sheets > mostSheets) {
          mostSheets = sheets;
          best = worths;
          most = across.most() * down.most();
        }
      }
    }
    long[] sheets = new long[instance.stocks()];
    Arrays.fill(sheets, most);
    return ofWorths(best, sheets, known, effort);
  }

  private double sheets(long[] worths) {
    double sum = 0;
    for (int kind = 0; kind < worths.length; kind++) {
      sum += (double) worths[kind] * instance.demand[kind];
    }
    return sum;
  }

  private long[] worths(Stretched across, Stretched down) {
    long[] worths = new long[instance.kinds()];
    for (int kind = 0; kind < worths.length; kind++) {
      worths[kind] = worth(kind, across, down);
    }
    return worths;
  }

  /** A piece that may be turned is worth the less of its two ways, of those that fit. */
  private long worth(int kind, Stretched across, Stretched down) {
    long x = instance.across[kind];
    long y = instance.down[kind];
    boolean fits = x <= width && y <= height;
    long straight = fits ? across.across[kind] * down.down[kind] : Long.MAX_VALUE;
    boolean fitsTurned = instance.turns[kind] && y <= width && x <= height;
    return Math.min(straight, fitsTurned ? across.down[kind] * down.across[kind] : Long.MAX_VALUE);
  }

  private List<DualFeasible> functions(long whole) {
    TreeSet<Long> steps = new TreeSet<>();
    LongStream.concat(Arrays.stream(instance.across), Arrays.stream(instance.down))
        .flatMap(side -> LongStream.of(side, whole - side + 1, whole - side))
        .filter(step -> step > 0 && 2 * step <= whole)
        .forEach(steps::add);
    int every = 1 + steps.size() / MOST_FUNCTIONS;
    List<DualFeasible> functions = new ArrayList<>(List.of(new Plain(whole)));
    int number = 0;
    for (long step : steps) {
      if (number++ % every == 0) {
        functions.add(new Threshold(whole, step));
        functions.add(new Steps(whole, step));
      }
    }
    return functions;
  }
}
