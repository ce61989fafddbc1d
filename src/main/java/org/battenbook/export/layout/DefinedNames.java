package org.battenbook.export.layout;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * The defined names of a file. The words of a line are joined with {@code _}. Another {@code _}
 * ends the name, because {@code lip2} and {@code mat1} alone are addresses of cells.
 */
final class DefinedNames {
  private static final int LONGEST = 200;

  private final Set<String> taken = new HashSet<>();

  /**
   * A name for a line.
   *
   * @param line the name of the line
   * @param page the page of the line; it becomes part of the name if the name is taken
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
