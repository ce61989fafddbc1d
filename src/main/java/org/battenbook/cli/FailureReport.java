package org.battenbook.cli;

import java.io.IOException;
import java.util.Arrays;
import org.battenbook.book.Loader;
import org.battenbook.saving.NotWritten;
import org.battenbook.workbook.UnknownPlace;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.ParameterException;

/** Reports a failure in words, never as a stack trace, and finds the exit status for it. */
final class FailureReport {
  private static final String OURS = "org.battenbook.";

  private FailureReport() {}

  /** Prints what went wrong. If that fails too, only the exit status says it. */
  static ExitStatus report(Throwable failure, Terminal terminal) {
    Throwable cause = failure instanceof ExecutionException ? failure.getCause() : failure;
    return reported(cause == null ? failure : cause, terminal);
  }

  private static ExitStatus reported(Throwable failure, Terminal terminal) {
    ExitStatus status = status(failure);
    try {
      if (status != ExitStatus.READER_GONE) {
        print(failure, terminal);
      }
      return status;
    } catch (NotPrinted not) {
      return status(not);
    }
  }

  private static void print(Throwable failure, Terminal terminal) {
    if (failure instanceof ParameterException wrong) {
      WrongCommandLine.print(wrong, terminal.err());
    } else {
      terminal.complain(message(failure));
    }
  }

  private static ExitStatus status(Throwable failure) {
    if (failure instanceof NotPrinted not && not.isClosedByReader()) {
      return ExitStatus.READER_GONE;
    }
    boolean badCommandLine =
        failure instanceof UnknownPlace
            || failure instanceof NoSuchChoice
            || failure instanceof NotPrinted
            || failure instanceof ParameterException
            || failure instanceof IOException
            || (failure instanceof Loader.Unreadable unreadable && isMisnamed(unreadable));
    return badCommandLine ? ExitStatus.COMMAND_LINE_WRONG : ExitStatus.WORKBOOK_AT_FAULT;
  }

  private static boolean isMisnamed(Loader.Unreadable unreadable) {
    return unreadable.code().equals("no-such-file") || unreadable.code().equals("is-a-folder");
  }

  private static String message(Throwable failure) {
    if (failure instanceof Loader.Unreadable unreadable) {
      String repair = unreadable.repair();
      return repair.isEmpty() ? unreadable.message() : unreadable.message() + "; " + repair;
    }
    if (failure instanceof UnknownPlace
        || failure instanceof NoSuchChoice
        || failure instanceof NotWritten) {
      return String.valueOf(failure.getMessage());
    }
    if (failure instanceof NotPrinted || failure instanceof IOException) {
      return "the answer cannot be written: " + failure.getMessage();
    }
    if (failure instanceof OutOfMemoryError) {
      return "the workbook does not fit into memory; give Java more: set BATTENBOOK_JAVA_OPTIONS to -Xmx4g";
    }
    if (failure instanceof StackOverflowError) {
      return "the workbook is nested too deeply to be calculated";
    }
    return "This is an error in Battenbook, not in the workbook: " + atFault(failure);
  }

  /** What a report of the mistake needs, on one line. */
  private static String atFault(Throwable failure) {
    return Arrays.stream(failure.getStackTrace())
        .filter(frame -> frame.getClassName().startsWith(OURS))
        .findFirst()
        .map(frame -> failure + " at " + frame)
        .orElseGet(failure::toString);
  }
}
