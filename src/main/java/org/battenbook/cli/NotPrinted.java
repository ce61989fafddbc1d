package org.battenbook.cli;

import java.io.IOException;
import java.util.List;

/** That an answer or a message could not be written to its stream. */
final class NotPrinted extends RuntimeException {
  private static final long serialVersionUID = 1;

  /** As Linux, macOS and Windows say it. */
  private static final List<String> CLOSED_PIPE =
      List.of("Broken pipe", "pipe is being closed", "pipe has been ended");

  NotPrinted(IOException cause) {
    super(cause.getMessage(), cause);
  }

  /** Whether it was whoever read the stream that closed it, as {@code head} does. */
  boolean isClosedByReader() {
    String message = String.valueOf(getMessage());
    return CLOSED_PIPE.stream().anyMatch(message::contains);
  }
}
