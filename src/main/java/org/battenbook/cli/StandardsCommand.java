package org.battenbook.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.battenbook.workbook.ShippedStandards;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code standards --to FOLDER}: writes out the standards that come with the program. */
@Command(
    name = "standards",
    mixinStandardHelpOptions = true,
    versionProvider = Battenbook.Version.class,
    description = {
      "Writes out the standards that come with Battenbook, to read or to edit.",
      "A folder 'standards' in your shop is used instead of them, all of it: then every standards"
          + " file comes from there. To change single numbers you need no copy: write 'change' lines"
          + " in shop.batten."
    })
final class StandardsCommand implements Callable<Integer> {
  private final Output err;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FOLDER",
      description = "The folder to write to; it is made if it is missing.")
  String to = "";

  StandardsCommand(Terminal terminal) {
    this.err = terminal.err();
  }

  @Override
  public Integer call() throws IOException {
    NewFiles files = NewFiles.in(to);
    List<String> names = ShippedStandards.names();
    names.forEach(name -> files.with(name, ShippedStandards.bytes(name)));
    refuse(files.others());
    files.write();
    err.line("wrote %d files to %s".formatted(names.size(), files.folder()));
    return ExitStatus.DONE.code();
  }

  private static void refuse(List<Path> others) {
    if (!others.isEmpty()) {
      String more = others.size() == 1 ? "" : " (and %d more)".formatted(others.size() - 1);
      throw new NoSuchChoice(
          "'%s'%s is there already and differs from the shipped one; name another folder"
              .formatted(others.get(0), more));
    }
  }
}
