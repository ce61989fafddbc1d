package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file could not be written; the message says why, in words. */
public final class NotWritten extends IOException {
  private static final long serialVersionUID = 1;

  NotWritten(Path file, String reason) {
    super("'%s' cannot be written: %s".formatted(file, reason));
  }

  /**
   * A file that must not be written.
   *
   * @param file its name, as people know it
   */
  public NotWritten(String file, String reason) {
    super("'%s' cannot be written: %s".formatted(file, reason));
  }

  /** The same failure in words. */
  static NotWritten of(Path file, IOException failure) {
    return failure instanceof NotWritten told
        ? told
        : new NotWritten(file, reason(failure, SideFile.folder(file)));
  }

  private static String reason(IOException failure, Path folder) {
    if (failure instanceof NoSuchFileException) {
      return "there is no folder '%s'".formatted(folder);
    }
    if (failure instanceof AccessDeniedException) {
      return "its folder is write-protected; ask its owner";
    }
    String reason =
        failure instanceof FileSystemException inFile ? inFile.getReason() : failure.getMessage();
    return reason == null ? "the computer gives no reason" : reason;
  }
}
