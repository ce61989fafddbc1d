package org.battenbook.book;

import java.util.Set;
import org.battenbook.listing.Listing;
import org.battenbook.picture.PictureSize;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.Explained;
import org.battenbook.source.SourceText;
import org.battenbook.source.Span;
import org.jspecify.annotations.Nullable;

/** Where the texts of workbooks come from: a folder, an archive, a test. */
public interface Loader {

  /**
   * Reads a workbook's text.
   *
   * @param path as the user or a {@code follows} wrote it
   * @param from the workbook that follows it; absent for the job itself
   * @return its text; two paths to the same file give texts of the same name
   * @throws Unreadable when it cannot be read or may not be
   */
  SourceText load(String path, @Nullable SourceText from) throws Unreadable;

  /**
   * Reads a list that rows of a table stand in. Where workbooks come from may hold no lists: then
   * none of any name is there.
   *
   * @param path as the workbook wrote it
   * @param from the workbook that names it
   * @param page the page of a spreadsheet file; absent where its first is meant
   * @throws Unreadable when it cannot be read or may not be
   */
  default Listing list(String path, SourceText from, @Nullable String page) throws Unreadable {
    throw new Unreadable("no-such-file", "there is no file '%s'".formatted(path), "");
  }

  /**
   * Reads the size of an image. Where workbooks come from may hold no images: then none of any name
   * is there.
   *
   * @param path as a text of the job names it
   * @param from the job
   * @throws Unreadable when it cannot be read, may not be, or is none
   */
  default PictureSize picture(String path, SourceText from) throws Unreadable {
    throw new Unreadable("no-such-file", "there is no file '%s'".formatted(path), "");
  }

  /**
   * Whether a workbook has changed while the job was read, so that all have to be read again. Where
   * workbooks come from may never change.
   */
  default boolean hasChanged() {
    return false;
  }

  /** Why a workbook could not be read, for people. */
  final class Unreadable extends Explained {
    private static final long serialVersionUID = 1;

    private static final Set<String> TOO_LARGE =
        Set.of("file-too-large", "list-too-large", "lists-too-large");

    /**
     * Says why.
     *
     * @param code a stable name, {@code no-such-file}
     * @param message what is wrong
     * @param repair what to do, or empty
     */
    public Unreadable(String code, String message, String repair) {
      super(code, message, repair);
    }

    /** Tells of it at the place that names the file; of one that is too large, nothing is read. */
    void tell(Span where, Diagnostics diagnostics) {
      if (TOO_LARGE.contains(code())) {
        diagnostics.refuse(code(), where, message(), repair());
      } else {
        diagnostics.fault(code(), where, message(), repair());
      }
    }
  }
}
