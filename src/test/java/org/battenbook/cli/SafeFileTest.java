package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {
  @TempDir Path folder;

  @Test
  void a_new_file_replaces_the_earlier_one_and_leaves_nothing_beside_it() throws IOException {
    Path target = Files.writeString(folder.resolve("job.xlsx"), "earlier");
    SafeFile.write(target, out -> out.write("new".getBytes(StandardCharsets.UTF_8)));
    assertThat(target).hasContent("new");
    assertThat(folder).isDirectoryNotContaining("glob:**.part*");
  }

  @Test
  void the_earlier_file_stays_when_writing_fails_in_the_middle() throws IOException {
    Path target = Files.writeString(folder.resolve("job.xlsx"), "earlier");
    assertThatThrownBy(
            () ->
                SafeFile.write(
                    target,
                    out -> {
                      out.write(1);
                      throw new IOException("the disk is full");
                    }))
        .hasMessage("'%s' cannot be written: the disk is full".formatted(target));
    assertThat(target).hasContent("earlier");
    assertThat(folder).isDirectoryNotContaining("glob:**.part*");
  }

  @Test
  void a_writer_that_closes_its_stream_does_no_harm() throws IOException {
    Path target = folder.resolve("job.xlsx");
    SafeFile.write(
        target,
        out -> {
          out.write(65);
          out.close();
        });
    assertThat(target).hasContent("A");
  }

  @Test
  void a_leftover_of_a_run_that_was_killed_is_stepped_over() throws IOException {
    Path leftover = Files.writeString(folder.resolve(".job.xlsx.part0"), "half");
    SafeFile.write(folder.resolve("job.xlsx"), out -> out.write(65));
    assertThat(leftover).hasContent("half");
    assertThat(folder.resolve("job.xlsx")).hasContent("A");
  }

  @Test
  void a_link_keeps_pointing_where_it_did() throws IOException {
    Path real = Files.writeString(folder.resolve("real.xlsx"), "earlier");
    Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), real);
    SafeFile.write(link, out -> out.write(65));
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("A");
  }

  @Test
  void who_may_read_and_write_it_stays() throws IOException {
    Path target = Files.writeString(folder.resolve("job.batten"), "earlier");
    Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw----");
    Files.setPosixFilePermissions(target, shared);
    SafeFile.write(target, out -> out.write(65));
    assertThat(Files.getPosixFilePermissions(target)).isEqualTo(shared);
  }

  @Test
  void a_missing_folder_is_not_made_up() {
    Path target = folder.resolve("no/such/job.xlsx");
    assertThatThrownBy(() -> SafeFile.write(target, out -> out.write(65)))
        .isInstanceOf(IOException.class);
    assertThat(folder).isEmptyDirectory();
  }
}
