package org.battenbook.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeSet;

/** Saves whose process was stopped, for tests of what comes next. */
public final class StoppedSaves {
  private StoppedSaves() {}

  /** Stops a save when all files but the last one in their order have their new texts. */
  public static void stopMidway(Path job, Map<Path, String> texts) throws IOException {
    Path last = Collections.max(new TreeSet<>(texts.keySet()));
    stop(StoppingDisk.killedBeforePutting(last.toRealPath()), job, texts);
  }

  /** Stops a save when its new texts are staged, and nothing is decided. */
  public static void stopEarly(Path job, Map<Path, String> texts) throws IOException {
    Path record = SideFile.RECORD.of(SideFile.named(job));
    stop(StoppingDisk.killedBeforePutting(record), job, texts);
  }

  private static void stop(Disk disk, Path job, Map<Path, String> texts) throws IOException {
    try (Claim claim = Claim.of(disk, SideFile.named(job))) {
      Save save = Save.of(disk, claim);
      for (Map.Entry<Path, String> text : texts.entrySet()) {
        byte[] after = text.getValue().getBytes(StandardCharsets.UTF_8);
        save.replacing(text.getKey(), Files.readAllBytes(text.getKey()), after);
      }
      save.write();
      throw new IllegalStateException("the save was not stopped");
    } catch (StoppingDisk.Stopped stopped) {
      // As it was meant.
    }
  }
}
