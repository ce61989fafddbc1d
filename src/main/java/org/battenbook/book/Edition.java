package org.battenbook.book;

import org.battenbook.source.SourceText;

/**
 * Which edition of a workbook a job was calculated with.
 *
 * @param file the workbook that states it
 * @param name the edition as it states it
 */
public record Edition(SourceText file, String name) {

  /** The file and its edition, for people. */
  public String words() {
    return "%s, edition %s".formatted(file.name(), name);
  }
}
