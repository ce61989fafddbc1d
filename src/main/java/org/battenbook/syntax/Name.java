package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.battenbook.source.TextKey;

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
    return TextKey.of(text);
  }

  @Override
  public String toString() {
    return text;
  }
}
