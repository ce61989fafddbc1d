package org.battenbook.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Pipe;
import java.util.List;

/**
 * Recognizes a write that failed because the reader of a pipe closed it. Java tells the reason only
 * in words of the system, in the language that the system speaks. So a write to a closed pipe of
 * our own is tried, and the words are compared.
 */
final class ClosedPipe {
  /** Windows makes our own pipe of sockets, which fail with other words. */
  private static final List<String> IN_WINDOWS =
      List.of("pipe is being closed", "pipe has been ended");

  private ClosedPipe() {}

  /** Whether a write failed for this reason. */
  static boolean explains(IOException failure) {
    String reason = String.valueOf(failure.getMessage());
    return reason.equals(words()) || IN_WINDOWS.stream().anyMatch(reason::contains);
  }

  /** What the system says of a closed pipe; empty where it makes no pipe. */
  private static String words() {
    try (Pipe.SinkChannel closed = closedByReader()) {
      closed.write(ByteBuffer.allocate(1));
      return "";
    } catch (IOException reason) {
      return String.valueOf(reason.getMessage());
    }
  }

  /** The end to write to of a pipe whose other end is closed. */
  static Pipe.SinkChannel closedByReader() throws IOException {
    Pipe pipe = Pipe.open();
    pipe.source().close();
    return pipe.sink();
  }
}
