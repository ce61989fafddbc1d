package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.battenbook.bind.Spot;
import org.battenbook.cli.CommandRun;
import org.battenbook.cli.HostileTexts;
import org.battenbook.planstore.MemoryStore;
import org.battenbook.planstore.PlanStore;
import org.battenbook.source.DisplayText;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.provider.MethodSource;

/** What commands print of a small workbook is text, and nothing that a terminal would obey. */
class CommandFuzzTest {
  private static final Set<Integer> STATUSES = Set.of(0, 1, 2, 3);

  /** What is printed in place of an exception. */
  private static final List<String> MISHAPS =
      List.of("This is an error in Battenbook", "does not fit into memory", "nested too deeply to");

  @TempDir static Path folder;

  static Stream<byte[]> seeds() throws IOException {
    Stream<byte[]> hostile =
        Stream.of(hostileJob(), HostileTexts.BROKEN, HostileTexts.ALONE, HostileTexts.PLANS)
            .map(text -> text.getBytes(UTF_8));
    return Stream.concat(hostile, Seeds.workbooks());
  }

  private static String hostileJob() {
    String job = HostileTexts.JOB.replace("rows of v from \"list.xlsx\"", "lines");
    String list = "name,width\n\"c%s\",3 in\n".formatted(HostileTexts.TEXT);
    return FilesInOneText.joined(Map.of(FilesInOneText.JOB, job, HostileTexts.LIST, list));
  }

  @MethodSource("seeds")
  @FuzzTest
  void commands(byte[] input) {
    Bounds.check(() -> ask(FilesInOneText.of(input)));
  }

  private static void ask(FilesInOneText files) throws IOException {
    files.writeInto(folder);
    PlanStore plans = new MemoryStore();
    check(plans, "fill");
    check(plans, "cuts");
    Workbook workbook = files.open();
    if (!workbook.hasFaults()) {
      askOfPlaces(plans, workbook.fill());
    }
  }

  private static void askOfPlaces(PlanStore plans, Filled filled) {
    filled.book().pages().stream().limit(1).forEach(page -> check(plans, "fill", "--page=" + page));
    for (Spot spot : Answers.asked(filled)) {
      String place = filled.results().decisions().words(spot);
      check(plans, "why", "--", place);
      check(plans, "why", "--tolerance", "--", place);
      check(plans, "feeds", "--", place);
    }
  }

  private static void check(PlanStore plans, String command, String... arguments) {
    String job = folder.resolve(FilesInOneText.JOB).toString();
    String[] all =
        Stream.concat(Stream.of(command, job), Stream.of(arguments)).toArray(String[]::new);
    CommandRun run = CommandRun.impatient(plans, all);
    checkText(run.out());
    // The line that tells how far a plan is goes back to its beginning.
    checkText(run.err().replace("\r", ""));
    if (!STATUSES.contains(run.status()) || MISHAPS.stream().anyMatch(run.err()::contains)) {
      throw new AssertionError("status %d: %s".formatted(run.status(), run.err()));
    }
  }

  private static void checkText(String printed) {
    if (printed.codePoints().anyMatch(c -> c != '\n' && DisplayText.isObeyed(c))) {
      throw new AssertionError("prints what a terminal obeys: " + DisplayText.safe(printed));
    }
  }
}
