package org.battenbook.syntax;

import org.battenbook.source.Span;
import org.battenbook.source.TextKey;
import org.jspecify.annotations.Nullable;

/**
 * A name of one or more words, as written. Two names are the same when their {@link #key keys} are.
 */
public final class Name {
  private final String text;
  private final Span span;

  /** Asked for far more often than names are read. */
  private final String key;

  /**
   * A name where it stands.
   *
   * @param text the words, one space between two
   */
  public Name(String text, Span span) {
    this.text = text;
    this.span = span;
    this.key = key(text);
  }

  /** The words, one space between two. */
  public String text() {
    return text;
  }

  public Span span() {
    return span;
  }

  /** What names are compared by: composed (NFC), trimmed, one space between words, without case. */
  public String key() {
    return key;
  }

  /** The key of a name or of a row's key text. */
  public static String key(String text) {
    return TextKey.of(text);
  }

  /** Equal are names of the same words at the same place. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Name that && text.equals(that.text) && span.equals(that.span);
  }

  @Override
  public int hashCode() {
    return 31 * text.hashCode() + span.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
