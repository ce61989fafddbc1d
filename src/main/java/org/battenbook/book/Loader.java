package org.battenbook.book;

import java.util.Set;
import org.battenbook.listing.Listing;
import org.battenbook.picture.PictureSize;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Explained;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/** Loads the files of a job, from a folder or any other source. */
public interface Loader {

  /**
   * Reads a workbook.
   *
   * @param path the path as the user or a {@code follows} wrote it
   * @param from the workbook that follows it; null for the job itself
   * @return its text; two paths to the same file give texts of the same name
   * @throws Unreadable if it cannot be read, or reading it is not allowed
   */
  SourceText load(String path, @Nullable SourceText from) throws Unreadable;

  /**
   * Reads a list with rows of a table. A loader without lists finds none.
   *
   * @param path the path as the workbook wrote it
   * @param from the workbook that names it
   * @param page the page of a spreadsheet file; null for its first page
   * @throws Unreadable if it cannot be read, or reading it is not allowed
   */
  default Listing list(String path, SourceText from, @Nullable String page) throws Unreadable {
    throw new Unreadable("no-such-file", "there is no file '%s'".formatted(path), "");
  }

  /**
   * Reads the size of an image, in pixels. A loader without images finds none.
   *
   * @param path the path as a text in the job names it
   * @param from the job
   * @throws Unreadable if it cannot be read, reading it is not allowed, or it is not an image
   */
  default PictureSize picture(String path, SourceText from) throws Unreadable {
    throw new Unreadable("no-such-file", "there is no file '%s'".formatted(path), "");
  }

  /**
   * Whether a workbook has changed since the job was read, so that all files must be read again. A
   * loader whose files never change returns false.
   */
  default boolean hasChanged() {
    return false;
  }

  /** Reports that a file could not be read, with a message for people. */
  final class Unreadable extends Explained {
    private static final long serialVersionUID = 1;

    private static final Set<String> TOO_LARGE =
        Set.of("file-too-large", "list-too-large", "lists-too-large");

    /**
     * Creates a report.
     *
     * @param code a stable name, {@code no-such-file}
     * @param message what is wrong
     * @param repair what to do; can be empty
     */
    public Unreadable(String code, String message, String repair) {
      super(code, message, repair);
    }

    /** Reports it where the file is named. A file that is too large ends the reading of the job. */
    void report(Span where, Diagnostics diagnostics) {
      if (TOO_LARGE.contains(code())) {
        diagnostics.refuse(code(), where, message(), repair());
      } else {
        diagnostics.fault(code(), where, message(), repair());
      }
    }
  }
}
