package org.battenbook.cli;

import java.io.IOException;
import org.battenbook.answer.FillAnswer;
import org.battenbook.book.Page;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.Name;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code fill JOB}: calculates a job and shows what a maker needs first. */
@Command(
    name = "fill",
    description = {
      "Calculates every value of a job.",
      "Shows the job's own pages, the checks that fail, and the cautions."
    })
final class FillCommand extends JobCommand {
  @Option(
      names = "--page",
      paramLabel = "NAME",
      description = "Shows all of one page, of the job or of the files that it follows.")
  @Nullable String page;

  @Option(names = "--json", description = "Answers in JSON, with all pages.")
  boolean json;

  FillCommand(Surroundings surroundings) {
    super(surroundings);
  }

  @Override
  void answerFaults(Workbook workbook) throws IOException {
    if (json) {
      terminal.out().json(FillAnswer.atFault(workbook)::writeTo);
    }
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    if (json) {
      terminal.out().json(FillAnswer.of(workbook, filled)::writeTo);
    } else if (page == null) {
      new FillReport(filled, terminal.out()).print();
    } else {
      new PageReport(filled, terminal.out()).printWhole(page(filled, page));
    }
    return status(filled);
  }

  private static Page page(Filled filled, String name) {
    Page found = filled.book().page(Name.key(name));
    if (found == null) {
      String question =
          NearNames.question(name, filled.book().pages().stream().map(Page::toString).toList());
      throw new NoSuchChoice(
          "no page is called '%s'%s".formatted(name, question.isEmpty() ? "" : "; " + question));
    }
    return found;
  }
}
