package org.battenbook.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.battenbook.export.SpreadsheetExport;
import org.battenbook.export.SpreadsheetExport.Fixed;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code export JOB --to FILE.xlsx}: writes a job as a spreadsheet file. */
@Command(
    name = "export",
    description = {
      "Writes a job as a spreadsheet file with live formulas.",
      "An earlier file of that name is replaced in one step, once the new one is whole."
    })
final class ExportCommand extends JobCommand {
  private static final String ENDING = ".xlsx";

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE.xlsx",
      description = "The file to write.")
  String to = "";

  ExportCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    Path target = target();
    ProgressLine progress = new ProgressLine(terminal);
    List<Fixed> fixed = new ArrayList<>();
    SafeFile.write(
        target, out -> fixed.addAll(SpreadsheetExport.write(filled, out, progress::rows)));
    progress.clear();
    terminal.err().println("wrote " + target);
    FixedReport.print(fixed, terminal);
    return status(filled);
  }

  private Path target() {
    if (!to.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      throw new NoSuchChoice(
          "'%s' is to be a spreadsheet: end its name in %s".formatted(to, ENDING));
    }
    try {
      return Path.of(to);
    } catch (InvalidPathException invalid) {
      throw new NoSuchChoice("'%s' cannot be a file's name".formatted(to));
    }
  }
}
