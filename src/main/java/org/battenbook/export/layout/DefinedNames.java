package org.battenbook.export.layout;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * The names that a file gives to cells: the words joined with {@code _}, and one at the end, since
 * {@code lip2} and {@code mat1} alone are addresses of cells.
 */
final class DefinedNames {
  private static final int LONGEST = 200;

  private final Set<String> taken = new HashSet<>();

  /**
   * A name for a line.
   *
   * @param line its name
   * @param page the page that it is on, which tells it from another of the same name
   */
  String name(String line, String page) {
    String name = joined(line);
    if (!taken.add(name.toLowerCase(Locale.ROOT))) {
      String onPage = joined(page + " " + line);
      name = onPage;
      for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
        name = onPage + i + "_";
      }
    }
    return name;
  }

  private static String joined(String words) {
    String joined = words.strip().replaceAll("[^\\p{L}\\p{Nd}]+", "_");
    String begun = joined.matches("[\\p{L}_].*") ? joined : "_" + joined;
    return begun.substring(0, Math.min(begun.length(), LONGEST)).replaceAll("_*$", "") + "_";
  }
}
