package org.battenbook.cli;

import java.io.IOException;

/** Thrown when an answer or a message cannot be written to its stream. */
final class NotPrinted extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final boolean closedByReader;

  NotPrinted(IOException cause) {
    super(cause.getMessage(), cause);
    closedByReader = ClosedPipe.explains(cause);
  }

  /** Whether the reader of the stream closed it, as {@code head} does. */
  boolean isClosedByReader() {
    return closedByReader;
  }
}
