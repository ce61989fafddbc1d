package org.battenbook.export.file;

import java.util.List;
import java.util.function.Consumer;

/** The rows of a sheet. They are made each time they are asked for: there may be millions. */
@FunctionalInterface
public interface SheetRows {
  /** Gives the rows from the top down, each with its cells from left to right. */
  void each(Consumer<List<SheetCell>> row);
}
