package org.battenbook.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names that someone may have meant by a name that does not exist. */
public final class NearNames {
  private static final int MOST = 3;

  private NearNames() {}

  /** At most three of the known names that lie near, the nearest first; equals in given order. */
  public static List<String> of(String wanted, Collection<String> known) {
    String low = wanted.toLowerCase(Locale.ROOT);
    record Near(String name, int distance) {}
    return known.stream()
        .distinct()
        .map(name -> new Near(name, distance(low, name.toLowerCase(Locale.ROOT))))
        .filter(near -> near.distance() <= Math.max(1, low.length() / 3))
        .sorted(Comparator.comparingInt(Near::distance))
        .limit(MOST)
        .map(Near::name)
        .toList();
  }

  /** As a question to end a message with: {@code did you mean 'a' or 'b'?}; empty for none. */
  public static String question(String wanted, Collection<String> known) {
    return question(of(wanted, known));
  }

  /** The question whether one of these was meant; empty for none. */
  public static String question(List<String> near) {
    return near.isEmpty() ? "" : "did you mean '" + String.join("' or '", near) + "'?";
  }

  /**
   * Edit distance (Wagner and Fischer, 1974) with a cheap way in: a name that holds every word that
   * is wanted is near, however much longer it is.
   */
  private static int distance(String a, String b) {
    if (List.of(b.split(" ")).containsAll(List.of(a.split(" ")))) {
      return 1;
    }
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      before[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int swap = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(swap, Math.min(before[j], now[j - 1]) + 1);
      }
      before = now;
    }
    return before[b.length()];
  }
}
