package org.battenbook.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.util.Collection;
import org.battenbook.source.DisplayText;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;

/**
 * One of the two streams that people read, and the one way to it. Every text comes out {@linkplain
 * DisplayText#safe safe}; the only escapes are those of our own inks. Once the stream cannot be
 * written, nothing more is.
 */
final class Output {
  private static final String ESCAPE = "\u001b[";

  private final OutputStream bytes;
  private final Writer writer;
  private final boolean colored;
  private final boolean byLine;
  private boolean hasFailed;

  /**
   * An output that writes to a stream.
   *
   * @param colored whether inks show
   * @param byLine whether each line is sent on at once
   */
  Output(OutputStream stream, Charset charset, boolean colored, boolean byLine) {
    this.bytes = new BufferedOutputStream(stream);
    this.writer = new OutputStreamWriter(bytes, charset);
    this.colored = colored;
    this.byLine = byLine;
  }

  /** Writes to the stream. */
  private interface Writing {
    void run() throws IOException;
  }

  /** An answer that writes its own JSON text, with all escaped that a terminal would obey. */
  interface Json {
    void writeTo(OutputStream out) throws IOException;
  }

  void line() {
    line("");
  }

  void line(String text) {
    line(InkedText.of(text));
  }

  void line(Ink ink, String text) {
    line(InkedText.of(ink, text));
  }

  /**
   * Prints one line.
   *
   * @throws NotPrinted when the stream cannot be written
   */
  void line(InkedText line) {
    write(() -> writer.write(shown(line) + System.lineSeparator()));
    if (byLine) {
      flush();
    }
  }

  void lines(Collection<InkedText> lines) {
    lines.forEach(this::line);
  }

  /** Prints over the line that the cursor stands in, and stays in it. */
  void overLine(String text) {
    write(() -> writer.write("\r" + DisplayText.safe(text)));
    flush();
  }

  /**
   * Prints a JSON text.
   *
   * @throws NotPrinted when the stream cannot be written
   */
  void json(Json answer) {
    write(
        () -> {
          writer.flush();
          answer.writeTo(bytes);
        });
  }

  /**
   * Sends on what was printed.
   *
   * @throws NotPrinted when the stream cannot be written
   */
  void flush() {
    write(writer::flush);
  }

  private void write(Writing writing) {
    if (hasFailed) {
      return;
    }
    try {
      writing.run();
    } catch (IOException failure) {
      hasFailed = true;
      throw new NotPrinted(failure);
    }
  }

  private String shown(InkedText line) {
    StringBuilder shown = new StringBuilder();
    line.parts().forEach(part -> shown.append(shown(part)));
    return shown.toString();
  }

  private String shown(InkedText.Part part) {
    String text = DisplayText.safe(part.text());
    String code = code(part.ink());
    return !colored || code.isEmpty() || text.isEmpty()
        ? text
        : ESCAPE + code + "m" + text + ESCAPE + "0m";
  }

  private static String code(Ink ink) {
    return switch (ink) {
      case PLAIN -> "";
      case HEADING -> "1";
      case FAULT -> "1;31";
      case CAUTION -> "33";
      case ASIDE -> "2";
    };
  }
}
