package org.battenbook.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where a command writes: answers to {@code out}, messages to {@code err}.
 *
 * @param charset how both are encoded
 * @param interactive whether a person looks on
 * @param coloured whether {@link Ink} shows
 */
record Terminal(
    PrintStream out, PrintStream err, Charset charset, boolean interactive, boolean coloured) {
  /** What answers are written with beyond plain letters. */
  private static final String SIGNS = "≈→…·";

  /** The process's own streams: in UTF-8, unless they are a terminal that reads another charset. */
  static Terminal ofProcess() {
    Console console = terminalConsole();
    Charset charset = charset(console);
    return new Terminal(
        new PrintStream(new FileOutputStream(FileDescriptor.out), false, charset),
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset),
        charset,
        console != null,
        isColoured(console != null, System.getenv()));
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

  /** Colour only on a terminal, and never where NO_COLOR is set (no-color.org). */
  static boolean isColoured(boolean onTerminal, Map<String, String> environment) {
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

  String paint(Ink ink, String text) {
    return coloured ? ink.paint(text) : text;
  }

  /** A message of one line, with the program's name before it. */
  void complain(String message) {
    err.println(paint(Ink.FAULT, "battenbook: ") + message);
  }

  void flush() {
    out.flush();
    err.flush();
  }
}
