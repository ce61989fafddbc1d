package org.battenbook.source;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Bytes to text, strictly: what is not UTF-8 is told of with its line, never guessed at. */
public final class Utf8Reader {
  private static final char REPLACEMENT = '\uFFFD';
  private final String file;

  /** Bytes that are no UTF-8 text, and what to do. */
  public static final class NotUtf8 extends Exception {
    private static final long serialVersionUID = 1;

    NotUtf8(String message) {
      super(message);
    }

    public String message() {
      return String.valueOf(getMessage());
    }

    public String repair() {
      return "save it as UTF-8 text";
    }
  }

  /** A reader for the file of this name. */
  public Utf8Reader(String file) {
    this.file = file;
  }

  /**
   * The text of a file, without the mark that some editors begin it with.
   *
   * @throws NotUtf8 where it is something else
   */
  public String text(byte[] bytes) throws NotUtf8 {
    if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
      throw notText("'%s' is saved as UTF-16".formatted(file));
    }
    int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
    String text = new String(bytes, start, bytes.length - start, StandardCharsets.UTF_8);
    if (text.indexOf(REPLACEMENT) >= 0) {
      refuseMalformed(bytes);
    }
    if (text.indexOf('\0') >= 0) {
      throw notText("'%s' is not text: it has zero bytes".formatted(file));
    }
    return text;
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  /** A replacement character may stand in the file as it is; only bytes decide. */
  private void refuseMalformed(byte[] bytes) throws NotUtf8 {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(1 << 13);
    CoderResult result = decoder.decode(in, out, true);
    while (result.isOverflow()) {
      out.clear();
      result = decoder.decode(in, out, true);
    }
    if (result.isError()) {
      throw notText(
          "'%s' is not UTF-8 text: line %s has the byte %s"
              .formatted(file, line(bytes, in.position()), hex(bytes[in.position()])));
    }
  }

  private static NotUtf8 notText(String message) {
    return new NotUtf8(message);
  }

  private static int line(byte[] bytes, int offset) {
    int line = 1;
    for (int i = 0; i < offset; i++) {
      boolean returnAlone = bytes[i] == '\r' && bytes[i + 1] != '\n';
      line += bytes[i] == '\n' || returnAlone ? 1 : 0;
    }
    return line;
  }

  private static String hex(byte b) {
    return Integer.toHexString(b & 0xFF).toUpperCase(Locale.ROOT);
  }
}
