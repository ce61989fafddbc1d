package org.battenbook.source;

import java.text.Normalizer;
import java.util.Locale;

/**
 * What texts and names are compared by: composed (NFC), trimmed, one space between words, without
 * case.
 */
public final class TextKey {
  /** Below it no character is composed of others: Unicode's annex 15 asks nothing of them. */
  private static final char FIRST_COMBINING = 0x300;

  private TextKey() {}

  /** The key of a text: two texts are the same to the language when their keys are equal. */
  public static String of(String text) {
    boolean space = !text.isEmpty();
    boolean upper = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~' || (c == ' ' && space)) {
        return keyOf(text);
      }
      space = c == ' ';
      upper |= c >= 'A' && c <= 'Z';
    }
    if (space) {
      return keyOf(text);
    }
    return upper ? text.toLowerCase(Locale.ROOT) : text;
  }

  private static String keyOf(String text) {
    return spaced(composed(text)).toLowerCase(Locale.ROOT);
  }

  private static String composed(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= FIRST_COMBINING) {
        return Normalizer.normalize(text, Normalizer.Form.NFC);
      }
    }
    return text;
  }

  /** Without spaces at the ends, and with one of any kind of them between words. */
  private static String spaced(String text) {
    StringBuilder words = new StringBuilder(text.length());
    boolean gap = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
        gap = !words.isEmpty();
      } else {
        words.append(gap ? " " : "").append(c);
        gap = false;
      }
    }
    return words.toString();
  }
}
