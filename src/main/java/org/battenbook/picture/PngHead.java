package org.battenbook.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Set;

/**
 * Of the beginning of a PNG file, the chunks that say how large it is and how it is turned, closed
 * as if they were all. The library reads every chunk, takes memory for it as its length says,
 * however little follows, and unpacks texts and color profiles of any size.
 */
final class PngHead {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final byte[] END = {
    0, 0, 0, 0, 'I', 'E', 'N', 'D', (byte) 0xae, 0x42, 0x60, (byte) 0x82
  };

  private static final Set<String> KEPT = Set.of("IHDR", "eXIf");

  /** Length, kind and check sum of a chunk. */
  private static final int AROUND = 12;

  private PngHead() {}

  /** What is kept of a PNG file; other bytes as they are. */
  static byte[] of(byte[] head) {
    int same = Arrays.mismatch(SIGNATURE, head);
    if (same != SIGNATURE.length && same >= 0) {
      return head;
    }
    ByteArrayOutputStream closed = new ByteArrayOutputStream();
    closed.writeBytes(SIGNATURE);
    int at = SIGNATURE.length;
    while (isWhole(head, at) && !kind(head, at).equals("IDAT")) {
      int size = AROUND + length(head, at);
      if (KEPT.contains(kind(head, at))) {
        closed.write(head, at, size);
      }
      at += size;
    }
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
