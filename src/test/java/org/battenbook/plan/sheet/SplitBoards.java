package org.battenbook.plan.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import org.battenbook.number.Rational;

/**
 * Boards split at random by through-cuts, so that their pieces fill them again with no waste but
 * kerfs: the fewest boards are known by construction.
 */
public final class SplitBoards {
  private static final long LEAST_SIDE = 40;

  private final Random random;
  private final long kerf;
  private final boolean turns;
  private final List<SheetPart> parts = new ArrayList<>();

  private SplitBoards(Random random, long kerf, boolean turns) {
    this.random = random;
    this.kerf = kerf;
    this.turns = turns;
  }

  /** Sides in millimetres; each board of 1220 by 810 mm comes to so many pieces. */
  public static SheetJob job(long seed, int boards, int pieces, long kerf, boolean turns) {
    SplitBoards split = new SplitBoards(new Random(seed), kerf, turns);
    for (int board = 0; board < boards; board++) {
      split.split(1220, 810, pieces);
    }
    return new SheetJob(
        split.parts,
        List.of(SheetStock.bought("board", Rational.of(1220), Rational.of(810), Rational.ONE)),
        Rational.of(kerf),
        OptionalInt.empty());
  }

  private void split(long across, long down, int pieces) {
    boolean isDown = across >= down == random.nextInt(4) > 0;
    long side = isDown ? across : down;
    long room = side - kerf - 2 * LEAST_SIDE;
    if (pieces == 1 || room <= 0) {
      parts.add(
          new SheetPart("part " + parts.size(), Rational.of(across), Rational.of(down), 1, turns));
      return;
    }
    long at = LEAST_SIDE + (long) (room * (0.2 + 0.6 * random.nextDouble()));
    int before = Math.max(1, (int) Math.round((double) pieces * at / side));
    before = Math.min(before, pieces - 1);
    long rest = side - at - kerf;
    split(isDown ? at : across, isDown ? down : at, before);
    split(isDown ? rest : across, isDown ? down : rest, pieces - before);
  }
}
