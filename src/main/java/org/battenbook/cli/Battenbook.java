package org.battenbook.cli;

import java.util.List;
import java.util.function.IntSupplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.ParseResult;

/** The command {@code battenbook}. */
@Command(
    name = "battenbook",
    description =
        "Calculates picture frames from plain-text workbooks: mats, rails, French cleats, cuts, prices.",
    mixinStandardHelpOptions = true,
    versionProvider = Battenbook.Version.class,
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Exit status: 0 done; 1 done, and a check fails;",
      "2 the command line is wrong, or the answer cannot be written;",
      "3 the workbook has errors; 141 the reader of the answer closed it."
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
    return tried(
        terminal,
        () -> {
          int status = tried(terminal, () -> execute(surroundings, arguments));
          terminal.flush();
          return status;
        });
  }

  private static int tried(Terminal terminal, IntSupplier command) {
    try {
      return command.getAsInt();
    } catch (Throwable failure) {
      return FailureReport.report(failure, terminal).code();
    }
  }

  /** The library of the command line only parses: it would print what went wrong as it came. */
  private static int execute(Surroundings surroundings, String... arguments) {
    refuseEmpty(arguments);
    ParseResult parsed = commandLine(surroundings, arguments).parseArgs(arguments);
    return new HelpFirst(surroundings.terminal().out()).execute(parsed);
  }

  /** Nothing is named by an empty word; the parser of the command line cannot read one. */
  private static void refuseEmpty(String[] arguments) {
    if (List.of(arguments).contains("")) {
      throw new NoSuchChoice("an argument is empty: write a name there, or leave it out");
    }
  }

  private static CommandLine commandLine(Surroundings surroundings, String... arguments) {
    CommandLine line = new CommandLine(new Battenbook());
    new Subcommands(surroundings).of(arguments).forEach(line::addSubcommand);
    return line.setExpandAtFiles(false).setAbbreviatedOptionsAllowed(true);
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
