package org.battenbook.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
  @TempDir Path folder;

  @Test
  void a_new_file_replaces_the_earlier_one_and_leaves_nothing_beside_it() throws IOException {
    Path target = Files.writeString(folder.resolve("job.xlsx"), "earlier");
    WholeFile.write(target, List.of(), out -> out.write("new".getBytes(StandardCharsets.UTF_8)));
    assertThat(target).hasContent("new");
    assertThat(folder).isDirectoryNotContaining("glob:**.battenbook-*");
  }

  @Test
  void the_earlier_file_stays_when_writing_fails_in_the_middle() throws IOException {
    Path target = Files.writeString(folder.resolve("job.xlsx"), "earlier");
    assertThatThrownBy(
            () ->
                WholeFile.write(
                    target,
                    List.of(),
                    out -> {
                      out.write(1);
                      throw new IOException("the disk is full");
                    }))
        .hasMessage("'%s' cannot be written: the disk is full".formatted(target));
    assertThat(target).hasContent("earlier");
    assertThat(folder).isDirectoryNotContaining("glob:**.battenbook-*");
  }

  @Test
  void the_first_failure_is_told_and_not_what_a_writer_makes_of_it() throws IOException {
    Path target = folder.resolve("job.xlsx");
    Content content =
        out -> {
          try {
            out.write(new byte[100_000]);
          } catch (IOException diskFull) {
            throw new IllegalStateException("unclosed entries", diskFull);
          }
        };
    Disk full = StoppingDisk.failingOnceAfter(3);
    assertThatThrownBy(() -> WholeFile.write(full, target, List.of(), content))
        .hasMessage("'%s' cannot be written: no space left".formatted(target));
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_writer_that_closes_its_stream_does_no_harm() throws IOException {
    Path target = folder.resolve("job.xlsx");
    WholeFile.write(
        target,
        List.of(),
        out -> {
          out.write(65);
          out.close();
        });
    assertThat(target).hasContent("A");
  }

  @Test
  void leftovers_of_runs_that_were_killed_are_removed() throws IOException {
    Files.writeString(folder.resolve(".job.xlsx.battenbook-part"), "half");
    Files.writeString(folder.resolve(".other.csv.battenbook-part"), "half");
    Files.writeString(folder.resolve(".other.csv.battenbook-claim"), "process 1 (1)");
    Path ofOthers = Files.writeString(folder.resolve(".job.xlsx.part"), "of another program");
    WholeFile.write(folder.resolve("job.xlsx"), List.of(), out -> out.write(65));
    assertThat(folder).isDirectoryNotContaining("glob:**.battenbook-*");
    assertThat(ofOthers).hasContent("of another program");
    assertThat(folder.resolve("job.xlsx")).hasContent("A");
  }

  @Test
  void what_another_run_is_writing_is_no_leftover() throws IOException {
    Path other = folder.toRealPath().resolve("other.csv");
    try (Claim claim = Claim.of(Disk.REAL, other)) {
      Path part = Files.writeString(SideFile.PART.of(claim.file()), "half");
      WholeFile.write(folder.resolve("job.xlsx"), List.of(), out -> out.write(65));
      assertThat(part).hasContent("half");
    }
  }

  @Test
  void only_an_ordinary_file_is_replaced() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("gone.csv"), folder.resolve("nothing"));
    Path device = Files.createSymbolicLink(folder.resolve("null.csv"), Path.of("/dev/null"));
    assertThatThrownBy(() -> WholeFile.write(folder, List.of(), out -> out.write(65)))
        .hasMessageContaining("it is a folder");
    assertThatThrownBy(() -> WholeFile.write(link, List.of(), out -> out.write(65)))
        .hasMessageContaining("a file that does not exist");
    assertThatThrownBy(() -> WholeFile.write(device, List.of(), out -> out.write(65)))
        .hasMessageContaining("a device or a pipe");
    assertThat(folder.resolve("nothing")).doesNotExist();
  }

  @Test
  void a_file_in_use_is_replaced_under_no_name() throws IOException {
    Path list = Files.writeString(folder.resolve("rack.csv"), "stick");
    Path soft = Files.createSymbolicLink(folder.resolve("soft.csv"), list);
    Path hard = Files.createLink(folder.resolve("hard.csv"), list);
    for (Path name : List.of(list, soft, hard)) {
      assertThatThrownBy(() -> WholeFile.write(name, List.of(list), out -> out.write(65)))
          .isInstanceOf(NotWritten.class)
          .hasMessageContaining("a file of the job");
    }
    assertThat(list).hasContent("stick");
  }

  @Test
  void a_link_keeps_pointing_where_it_did() throws IOException {
    Path real = Files.writeString(folder.resolve("real.xlsx"), "earlier");
    Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), real);
    WholeFile.write(link, List.of(), out -> out.write(65));
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("A");
  }

  @Test
  void who_may_read_and_write_it_stays() throws IOException {
    Path target = Files.writeString(folder.resolve("job.batten"), "earlier");
    Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw----");
    Files.setPosixFilePermissions(target, shared);
    WholeFile.write(target, List.of(), out -> out.write(65));
    assertThat(Files.getPosixFilePermissions(target)).isEqualTo(shared);
  }

  @Test
  void a_missing_folder_is_not_made_up() {
    Path target = folder.resolve("no/such/job.xlsx");
    assertThatThrownBy(() -> WholeFile.write(target, List.of(), out -> out.write(65)))
        .isInstanceOf(IOException.class);
    assertThat(folder).isEmptyDirectory();
  }
}
