package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.battenbook.keep.SlatShop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes that are killed while they write, a few times here and 500 times each with {@code
 * -Pslow}: no file is torn, no save is half done, and no later run is stuck.
 */
class KilledRunsTest {
  private static final int KILLS = System.getProperty("slow") == null ? 3 : 500;
  private static final int MOST_MILLIS = 150;
  private static final int WARM = 5;
  private static final String READY = "ready";
  private static final List<String> CHANGED = List.of("job.batten", "cellar.batten", "rack.batten");

  private static final String SHOP = "workbook \"Shop\"\n" + SlatShop.TABLES;

  private static final String RACK =
      """
      workbook "Rack"
      follows "shop.batten"
      page wood
        rows of rack
          lath   | length | on hand
          "roof" | 40 in  | 2
      """;

  private static final String CELLAR =
      """
      workbook "Cellar"
      follows "rack.batten"
      page wood
        rows of rack
          lath     | length | on hand
          "cellar" | 31 in  | 2
      """;

  private static final String JOB =
      """
      workbook "Bench"
      follows "cellar.batten"
      page wood
        rows of rack
          lath    | length | on hand
          "bench" | 62 in  | 1
        rows of slats
          slat    | long  | asked
          "slat"  | 15 in | 8
          "shelf" | 30 in | 1
      """;

  @TempDir Path root;
  private final Random random = new Random(20261128);
  private List<String> before = List.of();
  private List<String> after = List.of();

  /** Runs one command again and again, each time in a folder of its own, until it is killed. */
  static final class Runs {
    private Runs() {}

    public static void main(String[] arguments) throws IOException {
      Path root = Path.of(arguments[0]);
      for (int i = 0; ; i++) {
        Path folder = root.resolve(String.valueOf(i));
        makeJob(folder);
        Files.createFile(folder.resolve(READY));
        run(arguments[1], folder);
      }
    }

    private static void run(String command, Path folder) {
      String job = folder.resolve("job.batten").toString();
      if (command.equals("cuts")) {
        CommandRun.of("cuts", job, "--update-stock");
      } else {
        CommandRun.of("export", job, "--to", folder.resolve("job.json").toString());
      }
    }
  }

  private static void makeJob(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("shop.batten"), SHOP);
    Files.writeString(folder.resolve("rack.batten"), RACK);
    Files.writeString(folder.resolve("cellar.batten"), CELLAR);
    Files.writeString(folder.resolve("job.batten"), JOB);
    Files.writeString(folder.resolve("job.json"), "earlier");
  }

  private static List<String> texts(Path folder) throws IOException {
    List<String> texts = new ArrayList<>();
    for (String file : CHANGED) {
      texts.add(Files.readString(folder.resolve(file)));
    }
    return texts;
  }

  @BeforeEach
  void learnWhatARunWrites() throws IOException {
    Path folder = root.resolve("whole");
    makeJob(folder);
    before = texts(folder);
    CommandRun run =
        CommandRun.of("cuts", folder.resolve("job.batten").toString(), "--update-stock");
    assertThat(run.status()).as(run.err()).isZero();
    after = texts(folder);
    for (int i = 0; i < CHANGED.size(); i++) {
      assertThat(after.get(i)).isNotEqualTo(before.get(i));
    }
  }

  /** Kills a process at some moment after its first runs; gives the folder that it was at. */
  private Path killed(String command, Path folder) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Runs.class.getName(),
                folder.toString(),
                command)
            .inheritIO()
            .start();
    while (process.isAlive() && !isReady(folder, WARM)) {
      Thread.sleep(1);
    }
    Thread.sleep(random.nextInt(MOST_MILLIS));
    process.destroyForcibly().waitFor();
    int last = WARM;
    while (isReady(folder, last + 1)) {
      last++;
    }
    return folder.resolve(String.valueOf(last));
  }

  private static boolean isReady(Path folder, int run) {
    return Files.exists(folder.resolve(String.valueOf(run)).resolve(READY));
  }

  @Test
  void keeping_stock_in_three_files() throws IOException, InterruptedException {
    int midway = 0;
    int done = 0;
    for (int i = 0; i < KILLS; i++) {
      Path folder = killed("cuts", root.resolve("cuts" + i));
      midway += hasSideFiles(folder) ? 1 : 0;
      String job = folder.resolve("job.batten").toString();
      CommandRun next = CommandRun.of("fill", job);
      assertThat(next.status()).as(next.err()).isZero();
      List<String> found = texts(folder);
      assertThat(found).isIn(before, after);
      done += found.equals(after) ? 1 : 0;
      CommandRun again = CommandRun.of("cuts", job, "--update-stock");
      assertThat(again.status()).as(again.err()).isEqualTo(found.equals(after) ? 2 : 0);
      assertThat(texts(folder)).isEqualTo(after);
      assertThat(hasSideFiles(folder)).isFalse();
    }
    System.out.printf("%d kills: %d while it was written, %d done%n", KILLS, midway, done);
  }

  @Test
  void an_export_over_an_earlier_one() throws IOException, InterruptedException {
    Path example = root.resolve("whole");
    Path whole = example.resolve("job.json");
    makeJob(example);
    CommandRun.of("export", example.resolve("job.batten").toString(), "--to", whole.toString());
    int midway = 0;
    for (int i = 0; i < KILLS; i++) {
      Path folder = killed("export", root.resolve("export" + i));
      midway += hasSideFiles(folder) ? 1 : 0;
      String found = Files.readString(folder.resolve("job.json"));
      assertThat(withoutFolders(found)).isIn("earlier", withoutFolders(Files.readString(whole)));
      CommandRun next =
          CommandRun.of(
              "export",
              folder.resolve("job.batten").toString(),
              "--to",
              folder.resolve("other.csv").toString(),
              "--table",
              "rack");
      assertThat(next.status()).as(next.err()).isZero();
      assertThat(hasSideFiles(folder)).isFalse();
    }
    System.out.printf("%d kills: %d while it was written%n", KILLS, midway);
  }

  /** An answer names the files that it was read from. */
  private static String withoutFolders(String json) {
    return json.replaceAll("\"/[^\"]*/", "\"");
  }

  private static boolean hasSideFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.anyMatch(file -> file.toString().contains(".battenbook-"));
    }
  }
}
