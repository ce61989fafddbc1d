package org.battenbook.cli;

import java.io.IOException;
import java.util.List;
import org.battenbook.answer.ToleranceAnswer;
import org.battenbook.answer.WhyAnswer;
import org.battenbook.book.Edition;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code why JOB VALUE}: shows how a value was calculated. */
@Command(
    name = "why",
    description = "Shows how a value was calculated, back to the lines of the files that set it.")
final class WhyCommand extends JobCommand {
  @Parameters(
      index = "1",
      paramLabel = "VALUE",
      description =
          "A line, or a column of a row: \"saw kerf\", \"top rail of Tide chart, north\".")
  String place = "";

  @Option(names = "--json", description = "Answers in JSON.")
  boolean json;

  @Option(names = "--tolerance", description = "Shows the tolerance of the value instead.")
  boolean tolerance;

  @Option(
      names = "--depth",
      paramLabel = "N",
      description = "Levels to show; without it, as many as are easy to read.")
  @Nullable Integer depth;

  WhyCommand(Surroundings surroundings) {
    super(surroundings);
  }

  @Override
  void refuseChoices() {
    if (depth != null && depth < 0) {
      throw new NoSuchChoice("--depth must be at least 0; it is %d".formatted(depth));
    }
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    if (tolerance) {
      showTolerance(filled);
      return ExitStatus.DONE;
    }
    Derivation derivation = filled.why(place);
    if (json) {
      WhyAnswer answer =
          depth == null
              ? WhyAnswer.of(filled, derivation)
              : WhyAnswer.of(filled, derivation, depth);
      terminal.out().json(answer::writeTo);
    } else {
      print(derivation, filled.book().editions());
    }
    return ExitStatus.DONE;
  }

  private void print(Derivation derivation, List<Edition> editions) {
    WhyReport report = new WhyReport(terminal.out());
    if (depth == null) {
      report.print(derivation);
    } else {
      report.print(derivation, depth);
    }
    report.printEditions(editions);
  }

  private void showTolerance(Filled filled) throws IOException {
    FilledValue value = filled.find(place);
    ErrorBudget errors = filled.errors(place);
    if (json) {
      terminal.out().json(new ToleranceAnswer(filled, value, errors)::writeTo);
    } else {
      new ToleranceReport(filled, terminal.out()).print(value, errors);
    }
  }
}
