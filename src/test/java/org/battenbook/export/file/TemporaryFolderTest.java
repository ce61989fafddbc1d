package org.battenbook.export.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.poi.util.TempFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemporaryFolderTest {
  private static final Duration LONG_AGO = Duration.ofDays(1);

  @TempDir Path parent;

  @Test
  void an_export_keeps_its_temporary_files_in_a_folder_of_its_owner_and_removes_it()
      throws IOException {
    List<Path> folders = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      SpreadsheetWriter.write(
          book(), OutputStream.nullOutputStream(), (row, all) -> folders.add(used()));
    }
    assertThat(folders).doesNotHaveDuplicates().hasSize(2).noneMatch(Files::exists);
    assertThat(used().getFileName().toString()).doesNotStartWith(TemporaryFolder.PREFIX);
  }

  @Test
  void an_export_that_fails_removes_its_folder() {
    List<Path> folders = new ArrayList<>();
    WritingProgress failing =
        (row, all) -> {
          folders.add(used());
          throw new IllegalStateException("stopped");
        };
    assertThatThrownBy(
            () -> SpreadsheetWriter.write(book(), OutputStream.nullOutputStream(), failing))
        .hasMessage("stopped");
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("no space left");
          }
        };
    assertThatThrownBy(
            () -> SpreadsheetWriter.write(book(), full, (row, all) -> folders.add(used())))
        .isInstanceOf(IOException.class);
    assertThat(folders).hasSize(2).noneMatch(Files::exists);
  }

  /** The folder that the library uses in this thread, seen to be for its owner only. */
  private static Path used() {
    try {
      Path file = TempFile.createTempFile("any", ".xml").toPath();
      Path folder = Objects.requireNonNull(file.getParent());
      if (folder.getFileName().toString().startsWith(TemporaryFolder.PREFIX)) {
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
            .isEqualTo("rwx------");
        assertThat(folder).isDirectoryContaining("glob:**poi-sxssf-sheet*");
      } else {
        Files.delete(file);
      }
      return folder;
    } catch (IOException failure) {
      throw new AssertionError(failure);
    }
  }

  @Test
  void what_a_run_of_this_process_uses_stays() throws IOException {
    try (TemporaryFolder first = TemporaryFolder.openIn(parent)) {
      age(first.path());
      TemporaryFolder.openIn(parent).close();
      assertThat(first.path()).isDirectory();
    }
    assertThat(parent).isEmptyDirectory();
  }

  @Test
  void what_another_process_uses_stays_until_that_is_dead() throws Exception {
    Process other = otherProcess();
    BufferedReader told =
        new BufferedReader(new InputStreamReader(other.getInputStream(), StandardCharsets.UTF_8));
    Path folder = Path.of(told.readLine());
    Files.writeString(folder.resolve("poi-sxssf-sheet1.xml"), "<row/>");
    age(folder);
    TemporaryFolder.openIn(parent).close();
    assertThat(folder).isDirectory();
    other.destroyForcibly().waitFor();
    assertThat(folder).isDirectory();
    TemporaryFolder.openIn(parent).close();
    assertThat(parent).isEmptyDirectory();
  }

  @Test
  void what_is_new_or_of_somebody_else_stays() throws IOException {
    Path locking = Files.createDirectory(parent.resolve(TemporaryFolder.PREFIX + "locking"));
    Files.createFile(locking.resolve(TemporaryFolder.LOCK));
    Path notes = Files.createDirectory(parent.resolve(TemporaryFolder.PREFIX + "notes"));
    Files.writeString(notes.resolve("mine.txt"), "Saltmarsh Ferry Museum");
    Path link = Files.createSymbolicLink(parent.resolve(TemporaryFolder.PREFIX + "link"), notes);
    TemporaryFolder.openIn(parent).close();
    assertThat(parent).isDirectoryContaining(locking::equals);
    assertThat(notes.resolve("mine.txt")).exists();
    assertThat(link).isSymbolicLink();
  }

  private Process otherProcess() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            TemporaryFolderTest.class.getName(),
            parent.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** Opens a folder, says which, and waits. */
  public static void main(String[] arguments) throws IOException {
    try (TemporaryFolder folder = TemporaryFolder.openIn(Path.of(arguments[0]))) {
      System.out.println(folder.path());
      System.in.read();
    }
  }

  private static void age(Path folder) throws IOException {
    Files.setLastModifiedTime(
        folder.resolve(TemporaryFolder.LOCK), FileTime.from(Instant.now().minus(LONG_AGO)));
  }

  private static FileContent book() {
    SheetRows rows = row -> row.accept(List.of(SheetCell.words(0, 0, Look.TITLE, "Mats")));
    SheetContent sheet = new SheetContent("Mats", rows, Widths.of(rows), new TreeSet<>(), 0, 1, 1);
    return new FileContent("Test", List.of(sheet), new TreeMap<>());
  }
}
