package org.battenbook.source;

import java.text.Normalizer;
import java.util.Locale;

/**
 * What texts and names are compared by: composed (NFC), trimmed, one space between words, without
 * case.
 */
public final class TextKey {
  private TextKey() {}

  /** The key of a text: two texts are the same to the language when their keys are equal. */
  public static String of(String text) {
    boolean plain = text.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'));
    if (plain) {
      return text;
    }
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    return composed.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
