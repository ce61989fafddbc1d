package org.battenbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.battenbook.saving.ShopFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code start FOLDER}: lays out a shop with a first job. */
@Command(
    name = "start",
    mixinStandardHelpOptions = true,
    versionProvider = Battenbook.Version.class,
    description = {
      "Lays out a folder for your shop: shop.batten, with your own numbers, mouldings and stock,"
          + " and a first job in the folder jobs.",
      "A job can use every file in its shop: the nearest folder above it that holds shop.batten."
    })
final class StartCommand implements Callable<Integer> {
  private static final String TEMPLATES = "/org/battenbook/start/";
  private static final String JOB = "jobs/first-frame.batten";

  private final Output out;

  @Parameters(
      index = "0",
      paramLabel = "FOLDER",
      description = "The folder to lay out; it is made if it is missing, and must be empty.")
  String folder = "";

  StartCommand(Terminal terminal) {
    this.out = terminal.out();
  }

  @Override
  public Integer call() throws IOException {
    NewFiles files = NewFiles.in(folder);
    if (!files.isFolderEmpty()) {
      throw new NoSuchChoice(
          "'%s' is not empty; name a new folder, such as my-shop".formatted(folder));
    }
    files.with(ShopFolder.FILE, template(ShopFolder.FILE)).with(JOB, template(JOB)).write();
    tellWhatIsNext();
    return ExitStatus.DONE.code();
  }

  private static byte[] template(String name) throws IOException {
    try (InputStream in = StartCommand.class.getResourceAsStream(TEMPLATES + name)) {
      return Objects.requireNonNull(in, name).readAllBytes();
    }
  }

  private void tellWhatIsNext() {
    out.line("Your shop is ready in %s:".formatted(folder));
    out.line("  shop.batten              your numbers, mouldings and stock, for every job");
    out.line("  jobs/first-frame.batten  a job with one picture");
    out.line("");
    out.line("Now type:");
    out.line("  cd %s".formatted(isPlain(folder) ? folder : "'" + folder + "'"));
    out.line("  battenbook fill %s".formatted(JOB));
    out.line("  battenbook cuts %s".formatted(JOB));
    out.line("");
    out.line("Then open jobs/first-frame.batten in a text editor and enter your own pictures.");
  }

  /** Whether a shell reads a name as it stands. */
  private static boolean isPlain(String name) {
    return name.matches("[\\w./+-]+");
  }
}
