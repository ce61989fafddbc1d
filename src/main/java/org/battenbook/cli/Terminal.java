package org.battenbook.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;
import org.jspecify.annotations.Nullable;

/** Where a command writes: answers to {@code out}, messages to {@code err}. */
final class Terminal {
  /** What answers are written with beyond plain letters. */
  private static final String SIGNS = "≈→…·";

  private final Output out;
  private final Output err;
  private final boolean interactive;

  /**
   * A terminal.
   *
   * @param charset how both streams are encoded
   * @param interactive whether a person looks on
   * @param colored whether inks show
   */
  Terminal(
      OutputStream out, OutputStream err, Charset charset, boolean interactive, boolean colored) {
    this.out = new Output(out, charset, colored, false);
    this.err = new Output(err, charset, colored, true);
    this.interactive = interactive;
  }

  /** The process's own streams: in UTF-8, unless they are a terminal that reads another charset. */
  static Terminal ofProcess() {
    Console console = terminalConsole();
    Charset charset = charset(console);
    return new Terminal(
        new FileOutputStream(FileDescriptor.out),
        new FileOutputStream(FileDescriptor.err),
        charset,
        console != null,
        isColored(console != null, System.getenv()));
  }

  /**
   * The console where people read it. Up to Java 21 there is none otherwise; later one is asked.
   */
  @SuppressWarnings("SystemConsoleNull")
  private static @Nullable Console terminalConsole() {
    Console console = System.console();
    if (console == null) {
      return null;
    }
    try {
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console))
          ? console
          : null;
    } catch (ReflectiveOperationException upToJava21) {
      return console;
    }
  }

  /** Color only on a terminal, and never where NO_COLOR is set (no-color.org). */
  static boolean isColored(boolean onTerminal, Map<String, String> environment) {
    return onTerminal
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "").equals("dumb");
  }

  private static Charset charset(@Nullable Console console) {
    if (console == null || !console.charset().newEncoder().canEncode(SIGNS)) {
      return StandardCharsets.UTF_8;
    }
    return console.charset();
  }

  /** For answers. */
  Output out() {
    return out;
  }

  /** For messages. */
  Output err() {
    return err;
  }

  boolean interactive() {
    return interactive;
  }

  /** A message of one line, with the program's name before it; what was answered stands above. */
  void complain(String message) {
    out.flush();
    err.line(InkedText.of(Ink.FAULT, "battenbook: ").and(message));
  }

  void flush() {
    out.flush();
    err.flush();
  }
}
