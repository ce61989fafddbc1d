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
 * Lower bounds on the cost of any plan of sheets. The first bound compares areas. The second
 * compares areas whose sides are scaled by dual feasible functions. These make sides just over a
 * half count more, so that the bound knows that two of them do not fit side by side.
 *
 * <p>After S. P. Fekete and J. Schepers, "New classes of fast lower bounds for bin packing
 * problems" (2001), and the function of M. A. Boschetti and A. Mingozzi (2003). Doubles only choose
 * the functions; the bound itself is a sum of whole numbers.
 */
final class SheetBound {
  private static final int MOST_FUNCTIONS = 40;

  private final SheetInstance instance;
  private final long width;
  private final long height;

  /**
   * A dual feasible function: sides that fit side by side on a sheet have a scaled total of at most
   * {@link #most}. In the records, {@code whole} is the side of the sheet.
   */
  private interface DualFeasible {
    /** The scaled side of the sheet. */
    long most();

    /** The scaled side of a piece. */
    long of(long side);
  }

  /** Leaves sides as they are. */
  private record Identity(long whole) implements DualFeasible {
    @Override
    public long most() {
      return whole;
    }

    @Override
    public long of(long side) {
      return side;
    }
  }

  /**
   * Counts a side shorter than {@code step} as 0, and one that leaves less than {@code step} beside
   * it as the whole side of the sheet.
   */
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

  /**
   * Counts sides in whole steps. A side shorter than half the sheet is rounded down. A longer side
   * counts as all steps but the whole steps beside it. Counts are doubled, so that exactly half the
   * sheet counts as half.
   */
  private record Rounding(long whole, long step) implements DualFeasible {
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

  /** Both sides of each kind, scaled by one function. */
  private static final class Scaled {
    final long[] across;
    final long[] down;

    Scaled(SheetInstance instance, DualFeasible function) {
      this.across = Arrays.stream(instance.across).map(function::of).toArray();
      this.down = Arrays.stream(instance.down).map(function::of).toArray();
    }
  }

  private SheetBound(SheetInstance instance) {
    this.instance = instance;
    this.width = Arrays.stream(instance.widths).max().orElse(1);
    this.height = Arrays.stream(instance.heights).max().orElse(1);
  }

  /**
   * The best lower bound found, in units of cost.
   *
   * @param known the cost of the best packing so far; the bound looks no higher
   */
  static long of(SheetInstance instance, long known, Effort effort) {
    if (instance.stocks() == 0 || instance.kinds() == 0) {
      return 0;
    }
    SheetBound bound = new SheetBound(instance);
    long[] areas = IntStream.range(0, instance.kinds()).mapToLong(instance::area).toArray();
    long[] sheets = IntStream.range(0, instance.stocks()).mapToLong(instance::sheetArea).toArray();
    return Math.max(bound.ofValues(areas, sheets, known, effort), bound.ofScaled(known, effort));
  }

  /**
   * The bound for some values of pieces.
   *
   * @param values the value of one piece of each kind
   * @param capacities the highest total value of the pieces on one sheet of each stock
   */
  private long ofValues(long[] values, long[] capacities, long known, Effort effort) {
    long all = 0;
    for (int kind = 0; kind < values.length; kind++) {
      all += instance.demand[kind] * values[kind];
    }
    Offers offers = instance.offers(capacities);
    long byMaterial = MaterialBound.of(all, offers);
    return known <= byMaterial
        ? byMaterial
        : Math.max(byMaterial, StockBound.of(all, offers, known, effort));
  }

  /** The bound for the pair of functions, of those tried, that needs the most sheets. */
  private long ofScaled(long known, Effort effort) {
    List<DualFeasible> overWidth = functions(width);
    List<DualFeasible> overHeight = functions(height);
    effort.spend((long) overWidth.size() * overHeight.size() * instance.kinds());
    long[] best = new long[instance.kinds()];
    long most = 1;
    double mostSheets = -1;
    List<Scaled> scaledOverHeight =
        overHeight.stream().map(down -> new Scaled(instance, down)).toList();
    for (DualFeasible across : overWidth) {
      Scaled scaled = new Scaled(instance, across);
      for (int i = 0; i < overHeight.size() && !effort.isStopped(); i++) {
        effort.pass(2L * instance.kinds());
        DualFeasible down = overHeight.get(i);
        long[] values = values(scaled, scaledOverHeight.get(i));
        double sheets = sheets(values) / across.most() / down.most();
        if (sheets > mostSheets) {
          mostSheets = sheets;
          best = values;
          most = across.most() * down.most();
        }
      }
    }
    long[] capacities = new long[instance.stocks()];
    Arrays.fill(capacities, most);
    return ofValues(best, capacities, known, effort);
  }

  private double sheets(long[] values) {
    double sum = 0;
    for (int kind = 0; kind < values.length; kind++) {
      sum += (double) values[kind] * instance.demand[kind];
    }
    return sum;
  }

  private long[] values(Scaled across, Scaled down) {
    long[] values = new long[instance.kinds()];
    for (int kind = 0; kind < values.length; kind++) {
      values[kind] = value(kind, across, down);
    }
    return values;
  }

  /** The scaled area of a piece; of both orientations that fit, the smaller. */
  private long value(int kind, Scaled across, Scaled down) {
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
    List<DualFeasible> functions = new ArrayList<>(List.of(new Identity(whole)));
    int number = 0;
    for (long step : steps) {
      if (number++ % every == 0) {
        functions.add(new Threshold(whole, step));
        functions.add(new Rounding(whole, step));
      }
    }
    return functions;
  }
}
