package org.battenbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.battenbook.book.Loader;
import org.battenbook.cutting.Planning;
import org.battenbook.cutting.PlanningTime;
import org.battenbook.plan.PlanWatch;
import org.battenbook.planstore.PlanStore;
import org.battenbook.saving.Claim;
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
  private final InputStream keys;
  private @Nullable Claim claim;
  private @Nullable FolderLoader loader;

  @Parameters(index = "0", paramLabel = "JOB", description = "The job's workbook, a .batten file.")
  String job = "";

  @Option(
      names = "--fresh",
      description = "Makes the cut plans again instead of using those of earlier runs.")
  boolean fresh;

  @Option(
      names = "--planning-time",
      paramLabel = "TIME",
      description =
          "The time for all cut plans of the job together, such as \"2 h\"; without it, 5 min.")
  @Nullable String planningTime;

  JobCommand(Surroundings surroundings) {
    this.terminal = surroundings.terminal();
    this.line = new ProgressLine(terminal);
    this.plans = surroundings.plans();
    this.keys = surroundings.keys();
  }

  @Override
  public final Integer call() throws IOException, Loader.Unreadable {
    refuseChoices();
    try (Claim claimed = writesWorkbooks() && isFile() ? Claim.of(Path.of(job)) : null) {
      claim = claimed;
      loader = FolderLoader.of(job, claimed);
      return answer(loader).code();
    }
  }

  private boolean isFile() {
    try {
      return Files.isRegularFile(Path.of(job));
    } catch (InvalidPathException noPath) {
      return false;
    }
  }

  private ExitStatus answer(FolderLoader files) throws IOException, Loader.Unreadable {
    Planning planning =
        new Planning(mergesStops(), this::watch, plans, fresh).upTo(mostPlanningTime());
    Workbook workbook = open(files, planning);
    line.clear();
    DiagnosticReport messages = new DiagnosticReport(terminal.err());
    messages.print(workbook.diagnostics());
    if (workbook.hasFaults()) {
      answerFaults(workbook);
      return ExitStatus.WORKBOOK_AT_FAULT;
    }
    Filled filled = workbook.fill();
    messages.printFaults(filled);
    messages.print(filled.pictureCautions());
    return answer(workbook, filled);
  }

  /** Tells of saves that had been broken off even where the job cannot be read. */
  private Workbook open(FolderLoader files, Planning planning) throws Loader.Unreadable {
    try {
      return Workbook.open(job, files, planning);
    } finally {
      files.settledSaves().forEach(terminal::complain);
    }
  }

  /**
   * Refuses what cannot be meant, before the job is read.
   *
   * @throws NoSuchChoice with what to write instead
   */
  void refuseChoices() {}

  /** Whether this command changes workbooks: then no other may do so meanwhile. */
  boolean writesWorkbooks() {
    return false;
  }

  /** The claim on the job of a command that {@link #writesWorkbooks}. */
  final Claim claim() {
    return Objects.requireNonNull(claim, "only a job that is read to be written is claimed");
  }

  /** Every file that the job was read from. */
  final Collection<Path> filesRead() {
    return loader == null ? List.of() : loader.filesRead();
  }

  private PlanningTime mostPlanningTime() {
    try {
      return planningTime == null ? PlanningTime.USUAL : PlanningTime.of(planningTime);
    } catch (IllegalArgumentException notATime) {
      throw new NoSuchChoice(String.valueOf(notATime.getMessage()));
    }
  }

  private PlanWatch watch(String plan, String material) {
    return new PlanProgress(terminal, line, keys, System::nanoTime, plan + ": " + material);
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
