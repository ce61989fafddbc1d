package org.battenbook.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.battenbook.book.Loader;
import org.battenbook.cutting.Planning;
import org.battenbook.cutting.PlanningTime;
import org.battenbook.plan.PlanWatch;
import org.battenbook.planstore.PlanStore;
import org.battenbook.source.DisplayText;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FolderLoader;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the commands on a job have in common: it is read, its faults are told, it is filled. */
@Command(mixinStandardHelpOptions = true, versionProvider = Battenbook.Version.class)
abstract class JobCommand implements Callable<Integer> {
  final Terminal terminal;
  final ProgressLine line;
  private final PlanStore plans;

  @Parameters(index = "0", paramLabel = "JOB", description = "The job's workbook, a .batten file.")
  String job = "";

  @Option(
      names = "--fresh",
      description = "Plans again instead of using plans that were kept from earlier runs.")
  boolean fresh;

  @Option(
      names = "--planning-time",
      paramLabel = "TIME",
      description =
          "Allows plans up to this time for each material, such as \"2 h\"; without it a workbook may"
              + " ask for 5 min at most.")
  @Nullable String planningTime;

  JobCommand(Surroundings surroundings) {
    this.terminal = surroundings.terminal();
    this.line = new ProgressLine(terminal);
    this.plans = surroundings.plans();
  }

  @Override
  public final Integer call() throws IOException, Loader.Unreadable {
    refuseChoices();
    Planning planning =
        new Planning(mergesStops(), this::watch, plans, fresh).upTo(mostPlanningTime());
    Workbook workbook = Workbook.open(job, loader(), planning);
    line.clear();
    Messages messages = new Messages(terminal);
    messages.tell(workbook.diagnostics());
    if (workbook.hasFaults()) {
      answerFaults(workbook);
      return ExitStatus.WORKBOOK_AT_FAULT.code();
    }
    Filled filled = workbook.fill();
    messages.tellFaults(filled);
    messages.tell(filled.pictureCautions());
    return answer(workbook, filled).code();
  }

  /**
   * Refuses what cannot be meant, before the job is read.
   *
   * @throws NoSuchChoice with what to write instead
   */
  void refuseChoices() {}

  /** What reads the job, and what it follows. */
  final Loader loader() throws Loader.Unreadable {
    return FolderLoader.of(job);
  }

  private PlanningTime mostPlanningTime() {
    try {
      return planningTime == null ? PlanningTime.USUAL : PlanningTime.of(planningTime);
    } catch (IllegalArgumentException notATime) {
      throw new NoSuchChoice(String.valueOf(notATime.getMessage()));
    }
  }

  private PlanWatch watch(String plan, String material) {
    return new PlanProgress(
        terminal, line, System.in, System::nanoTime, DisplayText.safe(plan + ": " + material));
  }

  /** Whether near-equal stops of the saw are merged, where a plan says within what. */
  boolean mergesStops() {
    return false;
  }

  /** Answers for a workbook that cannot be filled; its faults have been told already. */
  void answerFaults(Workbook workbook) throws IOException {}

  abstract ExitStatus answer(Workbook workbook, Filled filled)
      throws IOException, Loader.Unreadable;

  /** The status of a job that was filled. */
  static ExitStatus status(Filled filled) {
    if (!filled.faults().isEmpty()) {
      return ExitStatus.WORKBOOK_AT_FAULT;
    }
    return filled.requirements().stream().allMatch(r -> r.isYes())
        ? ExitStatus.DONE
        : ExitStatus.REQUIREMENT_FAILS;
  }
}
