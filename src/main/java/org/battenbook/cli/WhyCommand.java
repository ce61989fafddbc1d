package org.battenbook.cli;

import java.io.IOException;
import org.battenbook.answer.WhyAnswer;
import org.battenbook.derive.Derivation;
import org.battenbook.workbook.Filled;
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
      description = "As you say it: \"saw kerf\", \"top rail of Tide chart, north\".")
  String place = "";

  @Option(names = "--json", description = "Answers in JSON.")
  boolean json;

  @Option(
      names = "--depth",
      paramLabel = "N",
      description = "Tells of parts so many steps down; as far as one can read if left out.")
  @Nullable Integer depth;

  WhyCommand(Terminal terminal) {
    super(terminal);
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    Derivation derivation = filled.why(place);
    if (json) {
      WhyAnswer.of(filled, derivation).writeTo(terminal.out());
    } else if (depth == null) {
      new WhyReport(terminal).print(derivation);
    } else {
      new WhyReport(terminal).print(derivation, Math.max(0, depth));
    }
    return ExitStatus.DONE;
  }
}
