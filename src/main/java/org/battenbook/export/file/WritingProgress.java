package org.battenbook.export.file;

/** Receives the progress of a file that is being written. */
@FunctionalInterface
public interface WritingProgress {
  /**
   * Reports another row.
   *
   * @param written how many rows are written
   * @param all how many rows the file will have
   */
  void rows(int written, int all);
}
