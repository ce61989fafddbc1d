package org.battenbook.listing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A list as another program wrote it: rows of cells, each a text as it would be typed. Rows count
 * from 1 as people see them; a row that is blank is there, without cells.
 *
 * @param name the file's path as messages print it
 */
public record Listing(String name, List<List<String>> rows) {
  public Listing {
    rows = List.copyOf(rows);
  }

  /**
   * Sees to it that a file can be a list, by its name's ending, before it is opened.
   *
   * @throws BadList where it ends otherwise
   */
  public static void checkEnding(String name) throws BadList {
    ListFormat.called(name);
  }

  /** How many cells its rows have, up to the last that is filled in each. */
  public long cellCount() {
    return rows.stream().mapToLong(List::size).sum();
  }

  /** The same rows under another name. */
  public Listing named(String path) {
    return new Listing(path, rows);
  }

  /**
   * Reads a file.
   *
   * @param name its path as messages print it; its ending says what it is
   * @param page the page of a spreadsheet file; absent where its first is meant
   * @throws BadList where it is no such file, or larger than any list needs to be
   */
  public static Listing read(String name, byte[] bytes, @Nullable String page) throws BadList {
    return new Listing(name, ListFormat.called(name).read(name, bytes, page));
  }
}
