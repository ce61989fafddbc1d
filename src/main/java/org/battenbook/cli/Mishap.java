package org.battenbook.cli;

import java.io.IOException;
import java.util.Arrays;
import org.battenbook.book.Loader;
import org.battenbook.saving.NotWritten;
import org.battenbook.workbook.UnknownPlace;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.ParameterException;

/** What went wrong, in words and with an exit status; people are never shown a stack trace. */
final class Mishap {
  private static final String OURS = "org.battenbook.";

  private Mishap() {}

  /** Says what went wrong; where that cannot be written either, the status alone tells it. */
  static ExitStatus tell(Throwable mishap, Terminal terminal) {
    Throwable cause = mishap instanceof ExecutionException ? mishap.getCause() : mishap;
    return told(cause == null ? mishap : cause, terminal);
  }

  private static ExitStatus told(Throwable mishap, Terminal terminal) {
    ExitStatus status = status(mishap);
    try {
      if (status != ExitStatus.READER_GONE) {
        print(mishap, terminal);
      }
      return status;
    } catch (NotPrinted not) {
      return status(not);
    }
  }

  private static void print(Throwable mishap, Terminal terminal) {
    if (mishap instanceof ParameterException wrong) {
      WrongCommandLine.print(wrong, terminal.err());
    } else {
      terminal.complain(message(mishap));
    }
  }

  private static ExitStatus status(Throwable mishap) {
    if (mishap instanceof NotPrinted not && not.isClosedByReader()) {
      return ExitStatus.READER_GONE;
    }
    boolean badCommandLine =
        mishap instanceof UnknownPlace
            || mishap instanceof NoSuchChoice
            || mishap instanceof NotPrinted
            || mishap instanceof ParameterException
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
    if (mishap instanceof UnknownPlace
        || mishap instanceof NoSuchChoice
        || mishap instanceof NotWritten) {
      return String.valueOf(mishap.getMessage());
    }
    if (mishap instanceof NotPrinted || mishap instanceof IOException) {
      return "the answer cannot be written: " + mishap.getMessage();
    }
    if (mishap instanceof OutOfMemoryError) {
      return "the workbook does not fit into memory; give Java more, 'java -Xmx4g -jar …'";
    }
    if (mishap instanceof StackOverflowError) {
      return "the workbook is nested too deeply to be worked out";
    }
    return "Battenbook itself is at fault, not the workbook: " + atFault(mishap);
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
