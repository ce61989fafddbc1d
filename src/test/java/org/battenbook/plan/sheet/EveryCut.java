package org.battenbook.plan.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All ways to cut a few pieces of whole sides out of sheets of one size. Slow and plain. */
final class EveryCut {
  private record Question(int across, int down, int pieces) {}

  private final List<SheetPart> pieces;
  private final int kerf;
  private final Map<Question, Boolean> answers = new HashMap<>();

  private EveryCut(List<SheetPart> pieces, int kerf) {
    this.pieces = pieces;
    this.kerf = kerf;
  }

  /** The fewest sheets; parts are single pieces that fit one. */
  static int fewest(SheetJob job) {
    SheetStock stock = job.stocks().get(0);
    EveryCut every = new EveryCut(job.parts(), (int) job.kerf().longNumerator());
    int across = (int) stock.across().longNumerator();
    int down = (int) stock.down().longNumerator();
    return every.sheets(across, down, (1 << job.parts().size()) - 1);
  }

  private int sheets(int across, int down, int all) {
    int fewest = all == 0 ? 0 : Integer.MAX_VALUE;
    for (int some = all; some > 0; some = (some - 1) & all) {
      if (fits(across, down, some)) {
        fewest = Math.min(fewest, 1 + sheets(across, down, all & ~some));
      }
    }
    return fewest;
  }

  private boolean fits(int across, int down, int some) {
    if (across <= 0 || down <= 0) {
      return false;
    }
    Question question = new Question(across, down, some);
    Boolean known = answers.get(question);
    if (known == null) {
      known =
          Integer.bitCount(some) == 1
              ? fitsOne(across, down, pieces.get(Integer.numberOfTrailingZeros(some)))
              : fitsCut(across, down, some);
      answers.put(question, known);
    }
    return known;
  }

  private static boolean fitsOne(int across, int down, SheetPart piece) {
    long x = piece.across().longNumerator();
    long y = piece.down().longNumerator();
    return (x <= across && y <= down) || (piece.mayTurn() && y <= across && x <= down);
  }

  private boolean fitsCut(int across, int down, int some) {
    for (int first = (some - 1) & some; first > 0; first = (first - 1) & some) {
      int second = some & ~first;
      for (int at = 1; at < Math.max(across, down); at++) {
        if ((fits(at, down, first) && fits(across - at - kerf, down, second))
            || (fits(across, at, first) && fits(across, down - at - kerf, second))) {
          return true;
        }
      }
    }
    return false;
  }
}
