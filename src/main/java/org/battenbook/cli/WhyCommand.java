package org.battenbook.cli;

import java.io.IOException;
import org.battenbook.answer.ToleranceAnswer;
import org.battenbook.answer.WhyAnswer;
import org.battenbook.derive.Derivation;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code why JOB PLACE}: tells where a value came from. */
@Command(
    name = "why",
    description = "Tells where a value came from, down to the line of the file that set it.")
final class WhyCommand extends JobCommand {
  @Parameters(
      index = "1",
      paramLabel = "PLACE",
      description =
          "A line, or a column of a row: \"saw kerf\", \"top rail of Tide chart, north\".")
  String place = "";

  @Option(names = "--json", description = "Answers in JSON.")
  boolean json;

  @Option(
      names = "--tolerance",
      description = "Tells how far it may be off at worst, and by what, instead.")
  boolean tolerance;

  @Option(
      names = "--depth",
      paramLabel = "N",
      description = "Tells of parts so many steps down; as far as one can read if left out.")
  @Nullable Integer depth;

  WhyCommand(Surroundings surroundings) {
    super(surroundings);
  }

  @Override
  void refuseChoices() {
    if (depth != null && depth < 0) {
      throw new NoSuchChoice(
          "a depth of %d is below 0: write how many steps down".formatted(depth));
    }
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    if (tolerance) {
      tellTolerance(filled);
      return ExitStatus.DONE;
    }
    Derivation derivation = filled.why(place);
    if (json) {
      WhyAnswer answer =
          depth == null
              ? WhyAnswer.of(filled, derivation)
              : WhyAnswer.of(filled, derivation, depth);
      terminal.out().json(answer::writeTo);
    } else if (depth == null) {
      new WhyReport(terminal.out()).print(derivation);
    } else {
      new WhyReport(terminal.out()).print(derivation, depth);
    }
    return ExitStatus.DONE;
  }

  private void tellTolerance(Filled filled) throws IOException {
    FilledValue value = filled.find(place);
    ErrorBudget errors = filled.errors(place);
    if (json) {
      terminal.out().json(new ToleranceAnswer(filled, value, errors)::writeTo);
    } else {
      new ToleranceReport(filled, terminal.out()).print(value, errors);
    }
  }
}
