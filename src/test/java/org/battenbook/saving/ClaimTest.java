package org.battenbook.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One process has a file at a time. */
class ClaimTest {
  @TempDir Path folder;
  private Path job;

  @BeforeEach
  void makeJob() throws IOException {
    job = Files.writeString(folder.resolve("job.batten"), "workbook \"Job\"");
  }

  /** Claims a file and keeps it until it is killed. */
  static final class Holder {
    private Holder() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
      Claim claim = Claim.of(Path.of(arguments[0]));
      System.out.println(claim.file());
      System.out.flush();
      Thread.sleep(60_000);
    }
  }

  private Process holder() throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Holder.class.getName(),
                job.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertThat(process.inputReader().readLine()).endsWith("job.batten");
    return process;
  }

  @Test
  void whoever_comes_second_is_told_who_has_it() throws IOException, InterruptedException {
    Process holder = holder();
    try {
      assertThatThrownBy(() -> Claim.of(job))
          .isInstanceOf(NotWritten.class)
          .hasMessageContaining("'%s' cannot be written: process %d of ", real(), holder.pid())
          .hasMessageContaining("is changing it; wait until that ends, and run this again");
    } finally {
      holder.destroyForcibly().waitFor();
    }
  }

  @Test
  void a_process_that_is_killed_has_nothing_any_more() throws IOException, InterruptedException {
    Process holder = holder();
    holder.destroyForcibly().waitFor();
    assertThat(SideFile.CLAIM.isBeside(real())).isTrue();
    Claim.of(job).close();
    assertThat(SideFile.CLAIM.isBeside(real())).isFalse();
  }

  @Test
  void in_one_process_too_one_has_it_at_a_time() throws IOException {
    try (Claim claim = Claim.of(job)) {
      assertThat(claim.file()).isEqualTo(real());
      assertThat(Claim.tried(Disk.REAL, real())).isNull();
    }
    try (Claim next = Claim.of(job)) {
      assertThat(next.file()).isEqualTo(real());
    }
  }

  @Test
  void what_is_in_the_way_stays() throws IOException {
    Path inTheWay = Files.writeString(SideFile.CLAIM.of(real()), "x".repeat(1000));
    assertThatThrownBy(() -> Claim.of(job))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("is in the way");
    assertThat(inTheWay).hasContent("x".repeat(1000));
  }

  private Path real() throws IOException {
    return SideFile.named(job);
  }
}
