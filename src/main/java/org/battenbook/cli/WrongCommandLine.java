package org.battenbook.cli;

import org.battenbook.source.Ink;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command line: what is near, else how the command is used. */
final class WrongCommandLine {
  private WrongCommandLine() {}

  static void print(ParameterException wrong, Output err) {
    err.line(Ink.FAULT, String.valueOf(wrong.getMessage()));
    String near = wrong instanceof UnmatchedArgumentException unmatched ? near(unmatched) : "";
    if (near.isEmpty()) {
      err.lines(UsageText.of(wrong.getCommandLine()));
    } else {
      err.line(near);
    }
  }

  private static String near(UnmatchedArgumentException unmatched) {
    String near = String.join(" or ", unmatched.getSuggestions());
    return near.isEmpty() ? "" : "Did you mean: %s?".formatted(near);
  }
}
