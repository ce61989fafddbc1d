package org.battenbook.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A save that is stopped at each of its steps, or fails there, is all done or not at all. */
class StoppedSaveTest {
  private static final List<String> FILES =
      List.of("job.batten", "shop/mouldings.batten", "shop/rack.batten");

  /** Once a save is sure to be done, it is so at all later steps. */
  private static final Comparator<String> NEW_LAST =
      Comparator.comparing(text -> text.equals("new "));

  private static final Set<PosixFilePermission> OWNER_ONLY =
      PosixFilePermissions.fromString("rw-------");

  @TempDir Path root;
  private int folders;

  private Path newFolder() throws IOException {
    Path folder = root.resolve(String.valueOf(folders++));
    Files.createDirectories(folder.resolve("shop"));
    for (String file : FILES) {
      Files.writeString(folder.resolve(file), "old " + file);
    }
    return folder.toRealPath();
  }

  private static void save(Disk disk, Path folder, String from, String to) throws NotWritten {
    try (Claim job = Claim.of(disk, folder.resolve("job.batten"))) {
      Save save = Save.of(disk, job);
      for (String file : FILES) {
        save.replacing(folder.resolve(file), bytes(from + file), bytes(to + file));
      }
      save.write();
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static boolean isStopped(Disk disk, Path folder) throws NotWritten {
    try {
      save(disk, folder, "old ", "new ");
      return false;
    } catch (StoppingDisk.Stopped stopped) {
      return true;
    }
  }

  /** Settles whatever there is, as a command that reads these files does. */
  private static List<String> settle(Disk disk, Path folder, List<String> files) throws NotWritten {
    List<String> told = new ArrayList<>();
    for (String file : files) {
      Optional<String> settled = BrokenOffSave.settle(disk, folder.resolve(file), null);
      settled.ifPresent(told::add);
    }
    return told;
  }

  /** Which of the contents all files hold. */
  private static String contents(Path folder) throws IOException {
    List<String> words = new ArrayList<>();
    for (String file : FILES) {
      String text = Files.readString(folder.resolve(file));
      words.add(text.substring(0, text.length() - file.length()));
    }
    assertThat(words).as("the files of %s", folder).containsOnly(words.get(0));
    return words.get(0);
  }

  private static void expectNothingBeside(Path folder) throws IOException {
    assertThat(files(folder)).hasSize(FILES.size());
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void it_is_all_done_or_not_at_all_wherever_its_process_is_killed() throws IOException {
    stopAtEachStep(StoppingDisk::killedAfter);
  }

  @Test
  void it_is_all_done_or_not_at_all_wherever_the_power_is_cut() throws IOException {
    stopAtEachStep(StoppingDisk::cutOffAfter);
  }

  private void stopAtEachStep(IntFunction<StoppingDisk> disks) throws IOException {
    List<String> held = new ArrayList<>();
    boolean stopped = true;
    for (int steps = 0; stopped; steps++) {
      Path folder = newFolder();
      stopped = isStopped(disks.apply(steps), folder);
      List<String> told = settle(StoppingDisk.never(), folder, FILES);
      String contents = contents(folder);
      assertThat(String.join("", told))
          .satisfiesAnyOf(
              text -> assertThat(text).isEmpty(),
              text ->
                  assertThat(text).contains(contents.equals("new ") ? "are now saved" : "undone"));
      expectNothingBeside(folder);
      save(StoppingDisk.never(), folder, contents, "later ");
      assertThat(contents(folder)).isEqualTo("later ");
      held.add(contents);
    }
    assertThat(held).hasSizeGreaterThan(40).contains("old ", "new ").isSortedAccordingTo(NEW_LAST);
  }

  @Test
  void it_is_found_by_whoever_reads_one_file_of_it_for_another_job() throws IOException {
    boolean stopped = true;
    for (int steps = 0; stopped; steps++) {
      Path folder = newFolder();
      stopped = isStopped(StoppingDisk.killedAfter(steps), folder);
      settle(StoppingDisk.never(), folder, FILES.subList(2, 3));
      contents(folder);
    }
  }

  @Test
  void settling_it_may_be_stopped_as_well() throws IOException {
    boolean stopped = true;
    for (int steps = 0; stopped; steps++) {
      boolean settlingStopped = true;
      for (int further = 0; settlingStopped; further++) {
        Path folder = newFolder();
        stopped = isStopped(StoppingDisk.killedAfter(steps), folder);
        settlingStopped = isSettlingStopped(StoppingDisk.killedAfter(further), folder);
        settle(StoppingDisk.never(), folder, FILES);
        contents(folder);
        expectNothingBeside(folder);
      }
    }
  }

  private static boolean isSettlingStopped(Disk disk, Path folder) throws NotWritten {
    try {
      settle(disk, folder, FILES);
      return false;
    } catch (StoppingDisk.Stopped stopped) {
      return true;
    }
  }

  /** One file was edited by hand after the stop: it stays, and so the others go back. */
  @Test
  void undoing_it_may_be_stopped_as_well() throws IOException {
    undoWithEdited(FILES.get(2), this::stoppedBetweenTwoRenames);
    undoWithEdited(FILES.get(0), this::stoppedBeforeTheFirstRename);
  }

  private interface Stop {
    Path folder() throws IOException;
  }

  private static void undoWithEdited(String edited, Stop stop) throws IOException {
    boolean stopped = true;
    for (int further = 0; stopped; further++) {
      Path folder = stop.folder();
      Files.writeString(folder.resolve(edited), "edited");
      stopped = isSettlingStopped(StoppingDisk.killedAfter(further), folder);
      settle(StoppingDisk.never(), folder, FILES);
      for (String file : FILES) {
        String text = file.equals(edited) ? "edited" : "old " + file;
        assertThat(folder.resolve(file)).hasContent(text);
      }
      expectNothingBeside(folder);
    }
  }

  private Path stoppedBeforeTheFirstRename() throws IOException {
    return stoppedBeforePutting(0);
  }

  private Path stoppedBetweenTwoRenames() throws IOException {
    return stoppedBeforePutting(1);
  }

  private Path stoppedBeforePutting(int file) throws IOException {
    Path folder = newFolder();
    Path last = folder.resolve(FILES.get(file));
    assertThat(isStopped(StoppingDisk.killedBeforePutting(last), folder)).isTrue();
    return folder;
  }

  @Test
  void a_file_that_was_edited_after_it_had_its_new_content_stays() throws IOException {
    Path folder = stoppedBetweenTwoRenames();
    Files.writeString(folder.resolve("job.batten"), "edited");
    assertThat(settle(StoppingDisk.never(), folder, FILES))
        .singleElement()
        .asString()
        .contains("are now saved");
    assertThat(folder.resolve("job.batten")).hasContent("edited");
    assertThat(folder.resolve(FILES.get(1))).hasContent("new " + FILES.get(1));
    expectNothingBeside(folder);
  }

  @Test
  void a_step_that_fails_leaves_all_as_it_was_or_all_done() throws IOException {
    List<String> held = new ArrayList<>();
    boolean reached = true;
    for (int steps = 0; reached; steps++) {
      Path folder = newFolder();
      StoppingDisk disk = StoppingDisk.failingOnceAfter(steps);
      boolean failed = hasFailed(disk, folder);
      reached = disk.wasReached();
      if (failed) {
        settle(StoppingDisk.never(), folder, FILES);
      }
      String contents = contents(folder);
      assertThat(contents).isEqualTo(failed ? "old " : "new ");
      settle(StoppingDisk.never(), folder, FILES);
      expectNothingBeside(folder);
      held.add(contents);
    }
    assertThat(held).contains("old ", "new ");
  }

  private static boolean hasFailed(Disk disk, Path folder) {
    try {
      save(disk, folder, "old ", "new ");
      return false;
    } catch (NotWritten failure) {
      assertThat(failure).hasMessageContaining("cannot be written");
      return true;
    }
  }

  @Test
  void a_sent_folder_changes_nothing_by_a_record_in_it() throws IOException {
    Path folder = stoppedBetweenTwoRenames();
    Path sent = Files.createDirectories(root.resolve("sent"));
    copy(folder, sent);
    assertThatThrownBy(() -> settle(StoppingDisk.never(), sent.toRealPath(), FILES))
        .isInstanceOf(NotWritten.class)
        .hasMessageContaining("copied or changed since")
        .hasMessageContaining(".job.batten.battenbook-save");
    assertThat(sent.resolve(FILES.get(2))).hasContent("old " + FILES.get(2));
  }

  private static void copy(Path from, Path to) throws IOException {
    for (Path file : files(from)) {
      Path copy = to.resolve(from.relativize(file).toString());
      Files.createDirectories(copy.getParent());
      Files.copy(file, copy);
    }
  }

  @Test
  void a_record_that_leads_out_of_the_folder_is_refused() throws IOException {
    Path folder = newFolder();
    Path outside = Files.writeString(root.resolve("outside.batten"), "mine");
    Path job = folder.resolve("job.batten");
    Replacement theirs = new Replacement(outside.toRealPath(), bytes("mine"), bytes("theirs"));
    Files.writeString(SideFile.PART.of(outside.toRealPath()), "theirs");
    SaveRecord.of(job, List.of(theirs)).write(Disk.REAL);
    assertThatThrownBy(() -> settle(StoppingDisk.never(), folder, FILES))
        .isInstanceOf(NotWritten.class);
    assertThat(outside).hasContent("mine");
  }

  @Test
  void who_may_read_a_file_never_grows_while_it_is_saved() throws IOException {
    boolean stopped = true;
    for (int steps = 0; stopped; steps++) {
      Path folder = newFolder();
      for (String file : FILES) {
        Files.setPosixFilePermissions(folder.resolve(file), OWNER_ONLY);
      }
      stopped = isStopped(StoppingDisk.killedAfter(steps), folder);
      for (Path file : files(folder)) {
        if (SideFile.CLAIM.owner(file).isEmpty()) {
          assertThat(Files.getPosixFilePermissions(file)).as("%s", file).isEqualTo(OWNER_ONLY);
        }
      }
    }
  }

  @Test
  void a_whole_file_is_the_earlier_one_or_the_new_one_wherever_it_stops() throws IOException {
    boolean stopped = true;
    for (int steps = 0; stopped; steps++) {
      Path folder = newFolder();
      Path export = Files.writeString(folder.resolve("job.csv"), "earlier");
      stopped = isExportStopped(StoppingDisk.killedAfter(steps), export);
      assertThat(Files.readString(export)).isIn("earlier", "later");
      WholeFile.write(folder.resolve("other.csv"), List.of(), Content.of(bytes("other")));
      Files.delete(folder.resolve("other.csv"));
      Files.delete(export);
      expectNothingBeside(folder);
    }
  }

  private static boolean isExportStopped(Disk disk, Path export) throws NotWritten {
    try {
      WholeFile.write(disk, export, List.of(), Content.of(bytes("later")));
      return false;
    } catch (StoppingDisk.Stopped stopped) {
      return true;
    }
  }
}
