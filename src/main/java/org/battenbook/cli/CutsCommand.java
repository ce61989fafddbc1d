package org.battenbook.cli;

import java.io.IOException;
import java.util.List;
import org.battenbook.answer.CutsAnswer;
import org.battenbook.book.Loader;
import org.battenbook.keep.Keeping;
import org.battenbook.keep.NotKept;
import org.battenbook.saving.NotWritten;
import org.battenbook.source.NearNames;
import org.battenbook.syntax.Name;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code cuts JOB}: the cut list of a job's plans, to stand at the saw with. */
@Command(
    name = "cuts",
    description = {
      "Prints the cut list to take to the saw, stick by stick and sheet by sheet.",
      "Shows the saw stops, the marks on each stick, the cuts of each sheet in order, the offcuts,"
          + " and what to buy.",
      "When everything is cut, --update-stock updates the stock in your workbooks: it removes what"
          + " was used, adds the offcuts to keep, and records in the job what it used."
    })
final class CutsCommand extends JobCommand {
  @Option(names = "--plan", paramLabel = "NAME", description = "Prints only this plan.")
  @Nullable String plan;

  @Option(
      names = "--merge-stops",
      description = "Cuts nearly equal lengths at one stop, if the plan has a stop tolerance.")
  boolean mergesStops;

  @Option(
      names = "--update-stock",
      description = "Removes the used stock from the workbooks and adds the offcuts.")
  boolean keeps;

  @Option(names = "--json", description = "Answers in JSON.")
  boolean json;

  CutsCommand(Surroundings surroundings) {
    super(surroundings);
  }

  @Override
  boolean mergesStops() {
    return mergesStops;
  }

  @Override
  boolean writesWorkbooks() {
    return keeps;
  }

  @Override
  void answerFaults(Workbook workbook) throws IOException {
    if (json) {
      terminal.out().json(CutsAnswer.atFault(workbook)::writeTo);
    }
  }

  @Override
  ExitStatus answer(Workbook workbook, Filled filled) throws IOException, Loader.Unreadable {
    List<FilledPlan> plans = plans(filled);
    ExitStatus status = status(filled, plans);
    List<Keeping.Change> kept = List.of();
    if (keeps) {
      try {
        kept = keep(filled, plans);
      } catch (NotKept not) {
        terminal.complain(not.message());
        status = status == ExitStatus.DONE ? ExitStatus.COMMAND_LINE_WRONG : status;
      }
    }
    if (json) {
      terminal.out().json(CutsAnswer.of(workbook, filled, plans, kept)::writeTo);
    } else {
      new CutsReport(filled, terminal.out()).print(plans, kept);
    }
    return status;
  }

  /** Changes the stock in the workbooks, once it is known that they can be read like that. */
  private List<Keeping.Change> keep(Filled filled, List<FilledPlan> plans)
      throws NotKept, NotWritten {
    Keeping keeping = Keeping.of(filled, plans);
    line.clear();
    RevisedFiles.write(claim(), keeping.texts());
    return keeping.changes();
  }

  /** Only checks of the plans count here; {@code fill} reports the others. */
  private static ExitStatus status(Filled filled, List<FilledPlan> plans) {
    if (!filled.faults().isEmpty()) {
      return ExitStatus.WORKBOOK_AT_FAULT;
    }
    return plans.stream().allMatch(one -> one.broken().isEmpty())
        ? ExitStatus.DONE
        : ExitStatus.REQUIREMENT_FAILS;
  }

  private List<FilledPlan> plans(Filled filled) {
    List<FilledPlan> all = filled.plans();
    if (plan == null) {
      return all;
    }
    String key = Name.key(plan);
    List<FilledPlan> meant = all.stream().filter(p -> Name.key(p.name()).equals(key)).toList();
    if (meant.isEmpty()) {
      throw new NoSuchChoice(noPlan(plan, all.stream().map(FilledPlan::name).toList()));
    }
    return meant;
  }

  private static String noPlan(String name, List<String> names) {
    if (names.isEmpty()) {
      return CutsReport.NO_PLAN;
    }
    String question = NearNames.question(name, names);
    return "no plan is called '%s'; %s"
        .formatted(name, question.isEmpty() ? "there are: " + String.join(", ", names) : question);
  }
}
