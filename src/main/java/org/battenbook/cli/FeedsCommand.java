package org.battenbook.cli;

import java.io.IOException;
import java.util.List;
import org.battenbook.answer.FeedsAnswer;
import org.battenbook.bind.Spot;
import org.battenbook.derive.Feeds;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code feeds JOB VALUE}: shows which values use a value. */
@Command(
    name = "feeds",
    description = "Shows which values use one value, directly or through others.")
final class FeedsCommand extends JobCommand {
  @Parameters(
      index = "1",
      paramLabel = "VALUE",
      description = "A line, or a column of a row: \"saw kerf\", \"width of Tide chart, north\".")
  String place = "";

  @Option(names = "--json", description = "Answers in JSON.")
  boolean json;

  FeedsCommand(Surroundings surroundings) {
    super(surroundings);
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException {
    Spot spot = filled.spot(place);
    List<Feeds.Fed> fed = filled.feeds(place);
    if (json) {
      terminal.out().json(FeedsAnswer.of(filled, spot, fed)::writeTo);
    } else {
      new FeedsReport(filled, terminal.out()).print(filled.value(spot), fed);
    }
    return ExitStatus.DONE;
  }
}
