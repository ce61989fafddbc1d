package org.battenbook.export.layout;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** The names of the sheets of one file. Programs accept them, and no two differ only in case. */
final class SheetNames {
  private static final int LONGEST = 31;

  /** A name that one program reserves. */
  private static final String KEPT = "history";

  private final Set<String> taken = new HashSet<>(Set.of(KEPT));

  /** A name as close to the title of a page as possible. */
  String name(String title) {
    String legal = legal(title);
    String name = cut(legal, LONGEST);
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      String number = " (" + i + ")";
      name = cut(legal, LONGEST - number.length()) + number;
    }
    return name;
  }

  /** Removes characters that a name may not have. A comma would split the ranges for printing. */
  private static String legal(String title) {
    String spaced = title.replaceAll("[\\[\\]:*?/\\\\,\\p{Cntrl}]", " ").replaceAll("\\s+", " ");
    String bare = spaced.strip().replaceAll("^'+|'+$", "").strip();
    return bare.isEmpty() ? "Page" : bare;
  }

  /** Cuts a name between two characters, never inside one. */
  private static String cut(String name, int longest) {
    if (name.length() <= longest) {
      return name;
    }
    int end = Character.isLowSurrogate(name.charAt(longest)) ? longest - 1 : longest;
    return name.substring(0, end).strip().replaceAll("'+$", "");
  }
}
