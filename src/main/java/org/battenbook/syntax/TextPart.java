package org.battenbook.syntax;

import org.jspecify.annotations.Nullable;

/** A part of a text: words, or a hole that shows a value. */
public sealed interface TextPart {

  /** Words as they stand; quotes inside are single here. */
  record Words(String words) implements TextPart {}

  /**
   * {@code {moulding.stick length shown as ft}}: the value of a path, in its own form or another.
   */
  record Hole(Reference reference, @Nullable ShownAs shownAs) implements TextPart {}
}
