package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StandardsCommandTest {
  @TempDir Path root;

  private CommandRun write(Path folder) {
    return CommandRun.of("standards", "--to", folder.toString());
  }

  @Test
  void they_are_written_out_and_used_by_the_jobs_around_them() throws IOException {
    Path folder = root.resolve("standards");
    CommandRun run = write(folder);
    assertThat(run.status()).as(run.err()).isZero();
    Path mats = folder.resolve("allowances.batten");
    assertThat(mats).hasSameTextualContentAs(Path.of("workbooks/standards/allowances.batten"));
    Files.writeString(
        mats, Files.readString(mats).replace("eye level             = 60", "eye level = 58"));
    Path job = Files.copy(Path.of("workbooks/first-frame.batten"), root.resolve("job.batten"));
    assertThat(CommandRun.of("why", job.toString(), "eye level").out())
        .startsWith("eye level = 58 in")
        .contains("Calculated with " + folder + "/frame-shop.batten, edition ");
  }

  @Test
  void what_differs_is_not_replaced() throws IOException {
    assertThat(write(root).status()).isZero();
    assertThat(write(root).status()).isZero();
    Path mats = root.resolve("mats.batten");
    Files.writeString(mats, "mine");
    Files.delete(root.resolve("walls.batten"));
    CommandRun run = write(root);
    assertThat(run.status()).isEqualTo(ExitStatus.COMMAND_LINE_WRONG.code());
    assertThat(run.err())
        .contains("'" + mats + "' is there already and differs from the shipped one");
    assertThat(mats).hasContent("mine");
    assertThat(root.resolve("walls.batten")).doesNotExist();
  }

  @Test
  void a_file_is_no_folder() throws IOException {
    Path file = Files.createFile(root.resolve("file"));
    assertThat(write(file).err()).contains("is a file; name a folder");
  }
}
