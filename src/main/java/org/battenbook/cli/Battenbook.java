package org.battenbook.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;

/** The command {@code battenbook}. */
@Command(
    name = "battenbook",
    description = "Fills workbooks of exact, unit-aware formulas.",
    mixinStandardHelpOptions = true,
    versionProvider = Battenbook.Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Exit status: 0 done; 1 done, and a requirement does not hold;",
      "2 the command line is wrong; 3 the workbook has faults."
    })
public final class Battenbook {

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] arguments) {
    System.exit(run(Surroundings.ofProcess(), arguments));
  }

  /**
   * Runs a command.
   *
   * @return the exit status
   */
  static int run(Surroundings surroundings, String... arguments) {
    Terminal terminal = surroundings.terminal();
    try {
      refuseEmpty(arguments);
      return commandLine(surroundings).execute(arguments);
    } catch (Throwable mishap) {
      return Mishap.tell(mishap, terminal).code();
    } finally {
      terminal.flush();
    }
  }

  /** Nothing is named by an empty word; the parser of the command line cannot read one. */
  private static void refuseEmpty(String[] arguments) {
    if (List.of(arguments).contains("")) {
      throw new NoSuchChoice("an argument is empty: write a name there, or leave it out");
    }
  }

  private static CommandLine commandLine(Surroundings surroundings) {
    Terminal terminal = surroundings.terminal();
    CommandLine commandLine = new CommandLine(new Battenbook());
    commandLine
        .addSubcommand(new FillCommand(surroundings))
        .addSubcommand(new CutsCommand(surroundings))
        .addSubcommand(new WhyCommand(surroundings))
        .addSubcommand(new FeedsCommand(surroundings))
        .addSubcommand(new ExportCommand(surroundings))
        .addSubcommand(new CompletionCommand(terminal));
    return commandLine
        .setOut(new PrintWriter(terminal.out(), true, terminal.charset()))
        .setErr(new PrintWriter(terminal.err(), true, terminal.charset()))
        .setColorScheme(CommandLine.Help.defaultColorScheme(ansi(terminal)))
        .setAbbreviatedOptionsAllowed(true)
        .setExecutionExceptionHandler((e, command, parsed) -> Mishap.tell(e, terminal).code());
  }

  private static Ansi ansi(Terminal terminal) {
    return terminal.coloured() ? Ansi.ON : Ansi.OFF;
  }

  /** The version that the jar was built as. */
  static final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Battenbook.class.getPackage().getImplementationVersion();
      return new String[] {"battenbook " + (version == null ? "(not from a jar)" : version)};
    }
  }
}
