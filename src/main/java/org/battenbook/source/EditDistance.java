package org.battenbook.source;

/**
 * How many letters have to be put in, taken out, replaced, or swapped with their neighbor to make
 * one word of another, as far as a bound.
 *
 * <p>The optimal string alignment distance, a restricted form of F. J. Damerau's, <i>A technique
 * for computer detection and correction of spelling errors</i>, 1964. Only the band of cells that
 * can stay within the bound is worked out (E. Ukkonen, <i>Algorithms for approximate string
 * matching</i>, 1985), so that two long words cost no more than their length times the bound.
 */
final class EditDistance {
  /** No word is taken for another that is more edits away, however long both are. */
  private static final int MOST = 12;

  private final String from;
  private final int most;

  /**
   * Distances from a word.
   *
   * @param most the bound up to which they are told
   */
  EditDistance(String from, int most) {
    this.from = from;
    this.most = Math.min(most, MOST);
  }

  /** The bound. */
  int most() {
    return most;
  }

  /** The distance to another word; one more than the bound where it is larger than that. */
  int to(String word) {
    if (Math.abs(from.length() - word.length()) > most) {
      return most + 1;
    }
    int[] twoBefore = new int[word.length() + 1];
    int[] before = new int[word.length() + 1];
    int[] row = new int[word.length() + 1];
    for (int j = 0; j <= word.length(); j++) {
      before[j] = Math.min(j, most + 1);
    }
    for (int i = 1; i <= from.length(); i++) {
      if (fill(row, i, before, twoBefore, word) > most) {
        return most + 1;
      }
      int[] free = twoBefore;
      twoBefore = before;
      before = row;
      row = free;
    }
    return before[word.length()];
  }

  /** Fills the band of one row and gives its least; the cells at its rims count as too far. */
  private int fill(int[] row, int i, int[] before, int[] twoBefore, String word) {
    int first = Math.max(1, i - most);
    int last = Math.min(word.length(), i + most);
    row[first - 1] = first == 1 ? Math.min(i, most + 1) : most + 1;
    int least = row[first - 1];
    for (int j = first; j <= last; j++) {
      row[j] = Math.min(cell(row, i, j, before, twoBefore, word), most + 1);
      least = Math.min(least, row[j]);
    }
    if (last < word.length()) {
      row[last + 1] = most + 1;
    }
    return least;
  }

  private int cell(int[] row, int i, int j, int[] before, int[] twoBefore, String word) {
    boolean same = from.charAt(i - 1) == word.charAt(j - 1);
    int edits = Math.min(before[j - 1] + (same ? 0 : 1), Math.min(before[j], row[j - 1]) + 1);
    boolean swapped =
        i > 1
            && j > 1
            && from.charAt(i - 1) == word.charAt(j - 2)
            && from.charAt(i - 2) == word.charAt(j - 1);
    return swapped ? Math.min(edits, twoBefore[j - 2] + 1) : edits;
  }
}
