package org.battenbook.syntax;

import java.text.Normalizer;
import java.util.Locale;
import org.battenbook.source.Span;

/**
 * A name of one or more words, as written. Two names are the same when their {@link #key keys} are.
 *
 * @param text the words, one space between two
 */
public record Name(String text, Span span) {

  /** What names are compared by: composed (NFC), trimmed, one space between words, without case. */
  public String key() {
    return key(text);
  }

  /** The key of a name or of a row's key text. */
  public static String key(String text) {
    boolean plain = text.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'));
    if (plain) {
      return text;
    }
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    return composed.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  @Override
  public String toString() {
    return text;
  }
}
