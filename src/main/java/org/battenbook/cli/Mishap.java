package org.battenbook.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Arrays;
import org.battenbook.book.Loader;
import org.battenbook.workbook.UnknownPlace;

/** What went wrong, in words and with an exit status; people are never shown a stack trace. */
final class Mishap {
  private static final String OURS = "org.battenbook.";

  private Mishap() {}

  static ExitStatus tell(Throwable mishap, Terminal terminal) {
    terminal.complain(message(mishap));
    return status(mishap);
  }

  private static ExitStatus status(Throwable mishap) {
    boolean badCommandLine =
        mishap instanceof UnknownPlace
            || mishap instanceof NoSuchChoice
            || mishap instanceof IOException
            || (mishap instanceof Loader.Unreadable unreadable && isMisnamed(unreadable));
    return badCommandLine ? ExitStatus.COMMAND_LINE_WRONG : ExitStatus.WORKBOOK_AT_FAULT;
  }

  private static boolean isMisnamed(Loader.Unreadable unreadable) {
    return unreadable.code().equals("no-such-file") || unreadable.code().equals("is-a-folder");
  }

  private static String message(Throwable mishap) {
    if (mishap instanceof Loader.Unreadable unreadable) {
      String repair = unreadable.repair();
      return repair.isEmpty() ? unreadable.message() : unreadable.message() + "; " + repair;
    }
    if (mishap instanceof UnknownPlace || mishap instanceof NoSuchChoice) {
      return String.valueOf(mishap.getMessage());
    }
    if (mishap instanceof IOException failure) {
      return message(failure);
    }
    if (mishap instanceof OutOfMemoryError) {
      return "the workbook does not fit into memory; give Java more, 'java -Xmx4g -jar …'";
    }
    if (mishap instanceof StackOverflowError) {
      return "the workbook is nested too deeply to be worked out";
    }
    return "Battenbook itself is at fault, not the workbook: " + atFault(mishap);
  }

  private static String message(IOException failure) {
    if (failure instanceof NoSuchFileException missing) {
      return "there is no folder for '%s'".formatted(missing.getFile());
    }
    if (failure instanceof AccessDeniedException denied) {
      return "'%s' may not be written".formatted(denied.getFile());
    }
    if (failure instanceof FileSystemException inFile && inFile.getReason() != null) {
      return "'%s' cannot be written: %s".formatted(inFile.getFile(), inFile.getReason());
    }
    return "the answer cannot be written: " + failure.getMessage();
  }

  /** What a report of the mistake needs, on one line. */
  private static String atFault(Throwable mishap) {
    return Arrays.stream(mishap.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith(OURS))
        .findFirst()
        .map(frame -> mishap + " at " + frame)
        .orElseGet(mishap::toString);
  }
}
