package org.battenbook.export.layout;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * The names of the sheets of one file: legal to the open standard's programs, and different without
 * regard to case.
 */
final class SheetNames {
  private static final int LONGEST = 31;

  /** One program keeps this name for itself. */
  private static final String KEPT = "history";

  private final Set<String> taken = new HashSet<>(Set.of(KEPT));

  /** A name for a page's title; as close to it as can be. */
  String name(String title) {
    String legal = legal(title);
    String name = cut(legal, LONGEST);
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      String number = " (" + i + ")";
      name = cut(legal, LONGEST - number.length()) + number;
    }
    return name;
  }

  /** Without what no sheet may be called by; a comma parts the ranges that printing repeats. */
  private static String legal(String title) {
    String spaced = title.replaceAll("[\\[\\]:*?/\\\\,\\p{Cntrl}]", " ").replaceAll("\\s+", " ");
    String bare = spaced.strip().replaceAll("^'+|'+$", "").strip();
    return bare.isEmpty() ? "Page" : bare;
  }

  /** Cut between characters, never inside one. */
  private static String cut(String name, int longest) {
    if (name.length() <= longest) {
      return name;
    }
    int end = Character.isLowSurrogate(name.charAt(longest)) ? longest - 1 : longest;
    return name.substring(0, end).strip().replaceAll("'+$", "");
  }
}
