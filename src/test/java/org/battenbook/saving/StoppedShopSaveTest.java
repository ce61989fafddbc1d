package org.battenbook.saving;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A save of a job and of its shop's files above it, stopped at each of its steps. */
class StoppedShopSaveTest {
  private static final String JOB = "jobs/2026/job.batten";
  private static final List<String> FILES = List.of(JOB, "prices/rack.batten", ShopFolder.FILE);

  @TempDir Path root;
  private int folders;

  private Path newShop() throws IOException {
    Path shop = root.resolve(String.valueOf(folders++));
    for (String file : FILES) {
      Files.createDirectories(shop.resolve(file).getParent());
      Files.writeString(shop.resolve(file), "old " + file);
    }
    return shop.toRealPath();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static boolean isStopped(Disk disk, Path shop) throws NotWritten {
    try (Claim job = Claim.of(disk, shop.resolve(JOB))) {
      Save save = Save.of(disk, job);
      for (String file : FILES) {
        save.replacing(shop.resolve(file), bytes("old " + file), bytes("new " + file));
      }
      save.write();
      return false;
    } catch (StoppingDisk.Stopped stopped) {
      return true;
    }
  }

  private static List<String> contents(Path shop) throws IOException {
    List<String> contents = new ArrayList<>();
    for (String file : FILES) {
      contents.add(Files.readString(shop.resolve(file)).replace(file, ""));
    }
    return contents;
  }

  private static long filesIn(Path shop) throws IOException {
    try (Stream<Path> files = Files.walk(shop)) {
      return files.filter(Files::isRegularFile).count();
    }
  }

  @Test
  void whoever_reads_its_files_finds_all_done_or_nothing() throws IOException {
    boolean stopped = true;
    int done = 0;
    int steps = 0;
    for (; stopped; steps++) {
      Path shop = newShop();
      stopped = isStopped(StoppingDisk.killedAfter(steps), shop);
      for (String file : FILES) {
        BrokenOffSave.settle(StoppingDisk.never(), shop.resolve(file), null);
      }
      assertThat(contents(shop)).containsOnly(contents(shop).get(0));
      assertThat(filesIn(shop)).isEqualTo(FILES.size());
      done += contents(shop).get(0).equals("new ") ? 1 : 0;
    }
    assertThat(done).isBetween(5, steps - 5);
  }

  @Test
  void whoever_reads_only_the_shops_file_finds_it_too() throws IOException {
    boolean stopped = true;
    for (int steps = 0; stopped; steps++) {
      Path shop = newShop();
      stopped = isStopped(StoppingDisk.killedAfter(steps), shop);
      BrokenOffSave.settle(StoppingDisk.never(), shop.resolve(ShopFolder.FILE), null);
      assertThat(contents(shop)).containsOnly(contents(shop).get(0));
    }
  }

  /** A record may only lead to files that its job can use. */
  @Test
  void without_the_shops_file_a_job_has_no_say_over_the_folders_above_it() throws IOException {
    Path shop = newShop();
    Path job = shop.resolve(JOB);
    assertThat(SaveRecord.isOf(shop.resolve("prices/rack.batten"), job)).isTrue();
    assertThat(SaveRecord.isOf(root.toRealPath().resolve("other.batten"), job)).isFalse();
    Files.delete(shop.resolve(ShopFolder.FILE));
    assertThat(SaveRecord.isOf(shop.resolve("prices/rack.batten"), job)).isFalse();
  }
}
