package org.battenbook.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.battenbook.answer.FillAnswer;
import org.battenbook.book.Table;
import org.battenbook.export.SpreadsheetExport;
import org.battenbook.export.SpreadsheetExport.Fixed;
import org.battenbook.export.TableExport;
import org.battenbook.saving.Content;
import org.battenbook.saving.WholeFile;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code export JOB --to FILE}: writes a job for other programs, as the file's ending says. */
@Command(
    name = "export",
    description = {
      "Writes a job as a file for other programs.",
      "The ending of the file's name chooses the format: .xlsx is a spreadsheet with live formulas,"
          + " .csv is one table with decimal numbers, .json is the answer of fill --json.",
      "An older file of that name is replaced only when the new one is complete."
    })
final class ExportCommand extends JobCommand {
  @Option(
      names = "--to",
      required = true,
      paramLabel = "FILE",
      description = "The file to write; it ends in .xlsx, .csv or .json.")
  String to = "";

  @Option(
      names = "--table",
      paramLabel = "NAME",
      description = "The table for a .csv file; without it, the table that has the job's rows.")
  @Nullable String table;

  ExportCommand(Surroundings surroundings) {
    super(surroundings);
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    Path target = target();
    List<Fixed> fixed = new ArrayList<>();
    WholeFile.write(target, filesRead(), content(workbook, filled, fixed));
    terminal.err().line("wrote " + target);
    FixedReport.print(fixed, terminal.err());
    return status(filled);
  }

  private Content content(Workbook workbook, Filled filled, List<Fixed> fixed) {
    String ending = ending();
    if (table != null && !ending.equals(".csv")) {
      throw new NoSuchChoice("--table works only with a .csv file, which holds one table");
    }
    return switch (ending) {
      case ".xlsx" -> out -> fixed.addAll(spreadsheet(filled, out));
      case ".json" -> out -> FillAnswer.of(workbook, filled).writeTo(out);
      case ".csv" -> {
        Table chosen = TableChoice.of(filled, table);
        yield out -> TableExport.write(filled, chosen, out);
      }
      default ->
          throw new NoSuchChoice(
              "'%s' has no known ending: end its name in .xlsx, .csv or .json".formatted(to));
    };
  }

  private List<Fixed> spreadsheet(Filled filled, OutputStream out) throws IOException {
    ProgressLine progress = new ProgressLine(terminal);
    List<Fixed> fixed = SpreadsheetExport.write(filled, out, progress::rows);
    progress.clear();
    return fixed;
  }

  /** From the last point of the file's name on, in lower case; empty where it has none. */
  private String ending() {
    return to.substring(Math.max(0, to.lastIndexOf('.'))).toLowerCase(Locale.ROOT);
  }

  private Path target() {
    try {
      return Path.of(to);
    } catch (InvalidPathException invalid) {
      throw new NoSuchChoice("'%s' cannot be a file's name".formatted(to));
    }
  }
}
