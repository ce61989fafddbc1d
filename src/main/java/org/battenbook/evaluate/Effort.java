package org.battenbook.evaluate;

import java.util.Locale;
import org.battenbook.bound.Bound;
import org.battenbook.value.Value;

/**
 * How many rows a formula goes through in a whole fill, known before it runs. A workbook may come
 * from anyone: past a bound there is a fault of the value, not a fill that never ends.
 *
 * @param around for how many rows it runs
 * @param each how many rows it goes through each time
 */
record Effort(long around, long each) {
  private static final long MOST = Bound.ROWS_GONE_THROUGH.most();

  boolean isTooMuch() {
    return around > MOST / Math.max(1, each);
  }

  /** The same with fewer rows gone through each time. */
  Effort over(int fewer) {
    return new Effort(around, fewer);
  }

  /** All rows gone through, or the bound where they are more. */
  long total() {
    return isTooMuch() ? MOST : around * each;
  }

  Value.Fault fault() {
    return new Value.Fault(
        "too-many-rows",
        String.format(
            Locale.ROOT,
            "this goes through %,d rows for each of %,d rows, more than %s in all: begin"
                + " what stands after 'where' with '… = this', so that the rows are grouped once",
            each,
            around,
            Bound.ROWS_GONE_THROUGH.shown()));
  }
}
