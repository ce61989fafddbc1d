package org.battenbook.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The beginning of a PNG file up to its pixels, closed as if it were all: the library reads every
 * chunk, and takes memory for a chunk as its length says, however little follows.
 */
final class PngHead {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final byte[] END = {
    0, 0, 0, 0, 'I', 'E', 'N', 'D', (byte) 0xae, 0x42, 0x60, (byte) 0x82
  };

  /** Length, kind and check sum of a chunk. */
  private static final int AROUND = 12;

  private PngHead() {}

  /** The closed beginning of a PNG file; other bytes as they are. */
  static byte[] of(byte[] head) {
    int same = Arrays.mismatch(SIGNATURE, head);
    if (same != SIGNATURE.length && same >= 0) {
      return head;
    }
    int end = SIGNATURE.length;
    while (isWhole(head, end) && !kind(head, end).equals("IDAT")) {
      end += AROUND + length(head, end);
    }
    ByteArrayOutputStream closed = new ByteArrayOutputStream();
    closed.write(head, 0, end);
    closed.writeBytes(END);
    return closed.toByteArray();
  }

  private static boolean isWhole(byte[] head, int at) {
    int room = head.length - at - AROUND;
    return room >= 0 && length(head, at) >= 0 && length(head, at) <= room;
  }

  private static int length(byte[] head, int at) {
    return ByteBuffer.wrap(head).getInt(at);
  }

  private static String kind(byte[] head, int at) {
    return new String(head, at + 4, 4, StandardCharsets.US_ASCII);
  }
}
