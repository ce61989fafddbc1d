package org.battenbook.book;

import org.battenbook.syntax.Name;
import org.jspecify.annotations.Nullable;

/**
 * What a filled-in row says to tell which opened row it is: the row's own name, or the source row
 * that opens it and its number. Keys that say the same are equal.
 *
 * @param opening the opening that opens the row; null if the key is the row's own name
 * @param name the name of the source row or the row's own, as {@link Name#key} has it
 * @param number the row's number among those of its source row; empty if not told
 */
public record OpenedKey(@Nullable RowOpening opening, String name, String number) {

  /** Whether the row's own name is certain; the first of a source row has no number if alone. */
  public boolean hasCertainName() {
    return opening == null || !number.equals("1");
  }

  /** The row with a name of its own. */
  public static OpenedKey named(String name) {
    return new OpenedKey(null, Name.key(name), "");
  }

  /**
   * The row that a source row opens.
   *
   * @param number its number; empty if the source row opens only one
   */
  public static OpenedKey opened(RowOpening opening, String each, String number) {
    return new OpenedKey(opening, Name.key(each), number);
  }
}
