package org.battenbook.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** How a command is used, with the styles of the library that tells it turned into our inks. */
final class UsageText {
  private static final Pattern STYLE = Pattern.compile("\u001b\\[([0-9;]*)m");

  private UsageText() {}

  static List<InkedText> of(CommandLine command) {
    return command.getUsageMessage(Ansi.ON).lines().map(UsageText::inked).toList();
  }

  private static InkedText inked(String line) {
    InkedText inked = InkedText.of("");
    Ink ink = Ink.PLAIN;
    int from = 0;
    for (Matcher style = STYLE.matcher(line); style.find(); from = style.end()) {
      inked = inked.and(ink, line.substring(from, style.start()));
      ink = ink(style.group(1));
    }
    return inked.and(ink, line.substring(from));
  }

  /** Commands are bold, options and parameters yellow, what they stand for is in italics. */
  private static Ink ink(String style) {
    return switch (style) {
      case "1" -> Ink.HEADING;
      case "33" -> Ink.CAUTION;
      case "3" -> Ink.ASIDE;
      default -> Ink.PLAIN;
    };
  }
}
