package org.battenbook.source;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Names that someone may have meant by a name that does not exist. */
public final class NearNames {
  private static final int MOST = 3;
  private static final int MOST_LISTED = 12;

  private NearNames() {}

  /** At most three of the known names that lie near, the nearest first; equals in given order. */
  public static List<String> of(String wanted, Collection<String> known) {
    String low = wanted.toLowerCase(Locale.ROOT);
    EditDistance edits = new EditDistance(low, Math.max(1, low.length() / 3));
    Set<String> words = Set.copyOf(List.of(low.split(" ")));
    record Near(String name, int distance) {}
    return known.stream()
        .distinct()
        .map(name -> new Near(name, distance(name.toLowerCase(Locale.ROOT), words, edits)))
        .filter(near -> near.distance() <= edits.most())
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

  /** The question whether a near name was meant; other advice where none is near. */
  public static String questionOr(String otherwise, String wanted, Collection<String> known) {
    String question = question(wanted, known);
    return question.isEmpty() ? otherwise : question;
  }

  /** The question whether a near name was meant; where none is near, all names if they are few. */
  public static String questionOrList(String wanted, Collection<String> known) {
    boolean few = !known.isEmpty() && known.size() <= MOST_LISTED;
    return questionOr(few ? "choose from: " + String.join(", ", known) : "", wanted, known);
  }

  /** A name that holds every word that is wanted is near, however much longer it is. */
  private static int distance(String name, Set<String> words, EditDistance edits) {
    return words.stream().allMatch(name::contains) && List.of(name.split(" ")).containsAll(words)
        ? 1
        : edits.to(name);
  }
}
