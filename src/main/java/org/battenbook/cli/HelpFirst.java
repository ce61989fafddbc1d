package org.battenbook.cli;

import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** Answers whoever asks for help or the version; else runs the command. */
final class HelpFirst {
  private final Output out;

  HelpFirst(Output out) {
    this.out = out;
  }

  /** The exit status of what was asked. */
  int execute(ParseResult parsed) {
    Optional<CommandLine> asked =
        parsed.asCommandLineList().stream()
            .filter(c -> c.isUsageHelpRequested() || c.isVersionHelpRequested())
            .findFirst();
    asked.ifPresent(this::help);
    return asked.isPresent() ? ExitStatus.DONE.code() : new CommandLine.RunLast().execute(parsed);
  }

  private void help(CommandLine command) {
    if (command.isUsageHelpRequested()) {
      out.lines(UsageText.of(command));
    } else {
      Arrays.stream(command.getCommandSpec().version()).forEach(out::line);
    }
  }
}
