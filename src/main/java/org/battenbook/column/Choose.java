package org.battenbook.column;

import org.battenbook.number.Longs;
import org.battenbook.number.Real;
import org.jspecify.annotations.Nullable;

/** Takes each row from one of two lanes, both counted in their common tick. */
final class Choose {
  private Choose() {}

  static NumberLane of(BitLane choice, NumberLane yes, NumberLane no) {
    return new KernelDispatch(
            (a, b) -> longs(choice, a, b),
            (a, b) -> wides(choice, a, b),
            (a, b) -> ratios(choice, a, b),
            (a, b) -> rows(choice, a, b))
        .run(yes, no);
  }

  private static @Nullable LongLane longs(BitLane choice, LongLane yes, LongLane no) {
    CommonTick common = CommonTick.of(yes, no);
    if (common == null) {
      return null;
    }
    long most =
        Math.max(
            Longs.cappedProduct(yes.most, common.left()),
            Longs.cappedProduct(no.most, common.right()));
    return most == Long.MAX_VALUE
        ? null
        : new LongLane(
            chosen(choice, yes.ticks, common.left(), no.ticks, common.right()),
            common.tick(),
            most);
  }

  /** Without a branch: a bit becomes a mask of 64. */
  private static long[] chosen(BitLane choice, long[] yes, long byYes, long[] no, long byNo) {
    long[] chosen = new long[yes.length];
    for (int word = 0; word < choice.words.length; word++) {
      long bits = choice.words[word];
      int end = Math.min(chosen.length, (word + 1) << 6);
      for (int row = word << 6; row < end; row++) {
        long mask = -((bits >>> row) & 1);
        chosen[row] = ((yes[row] * byYes) & mask) | ((no[row] * byNo) & ~mask);
      }
    }
    return chosen;
  }

  private static @Nullable WideLane wides(BitLane choice, WideLane yes, WideLane no) {
    if (!yes.tick().equals(no.tick())) {
      return inCommonTick(choice, yes, no);
    }
    return new WideLane(
        chosen(choice, yes.high, 1, no.high, 1),
        chosen(choice, yes.low, 1, no.low, 1),
        yes.tick(),
        yes.most.max(no.most));
  }

  private static @Nullable WideLane inCommonTick(BitLane choice, WideLane yes, WideLane no) {
    CommonTick common = CommonTick.of(yes, no);
    WideLane left = common == null ? null : yes.inTick(common.tick(), common.left());
    WideLane right = common == null ? null : no.inTick(common.tick(), common.right());
    return left == null || right == null ? null : wides(choice, left, right);
  }

  private static @Nullable RatioLane ratios(BitLane choice, RatioLane yes, RatioLane no) {
    return RatioLane.of(
        longs(choice, yes.undivided(), no.undivided()),
        longs(choice, yes.divisors(), no.divisors()));
  }

  private static RealLane rows(BitLane choice, NumberLane yes, NumberLane no) {
    Real[] chosen = new Real[yes.rows()];
    for (int row = 0; row < chosen.length; row++) {
      chosen[row] = choice.at(row) ? yes.at(row) : no.at(row);
    }
    return new RealLane(chosen);
  }
}
