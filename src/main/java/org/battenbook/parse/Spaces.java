package org.battenbook.parse;

import java.util.regex.Pattern;

/** The spaces between words that are read as one thing, a name or a unit. */
final class Spaces {
  private static final Pattern RUN = Pattern.compile("[\\s\\p{Zs}]+");

  private Spaces() {}

  /** The words with one plain space between each two. */
  static String single(String words) {
    return RUN.matcher(words).replaceAll(" ");
  }
}
