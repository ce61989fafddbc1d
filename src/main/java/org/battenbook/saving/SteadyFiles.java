package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Workbooks that are read together and must all be of one state: before a save, or after it. The
 * reader names each one before reading it. When all are read, it asks whether one has changed, and
 * if so reads all of them again.
 */
public final class SteadyFiles {
  private final @Nullable Claim held;
  private final Map<Path, State> workbooks = new LinkedHashMap<>();
  private final Set<Path> all = new LinkedHashSet<>();
  private final Set<String> settled = new LinkedHashSet<>();

  /** What tells one content of a file from another, short of reading it. */
  private record State(long bytes, FileTime modified, @Nullable Object key) {

    static @Nullable State of(Path file) {
      try {
        BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
        return new State(now.size(), now.lastModifiedTime(), now.fileKey());
      } catch (IOException gone) {
        return null;
      }
    }
  }

  /**
   * No files yet.
   *
   * @param held what the reader has claimed
   */
  public SteadyFiles(@Nullable Claim held) {
    this.held = held;
  }

  /**
   * Tells of a workbook that is about to be read; a save of it that was broken off is settled
   * first.
   *
   * @throws NotWritten where it is being saved, or its save cannot be settled
   */
  public void workbook(Path file) throws NotWritten {
    try {
      Path named = SideFile.named(file);
      settle(named);
      if (Files.exists(file)) {
        Path real = file.toRealPath();
        if (!real.equals(named)) {
          settle(real);
        }
        workbooks.put(real, State.of(real));
        all.add(real);
      }
    } catch (NotWritten told) {
      throw told;
    } catch (IOException noFolder) {
      // Whoever reads the file says so.
    }
  }

  private void settle(Path file) throws NotWritten {
    BrokenOffSave.settle(file, held).ifPresent(settled::add);
  }

  /** Names another file that is about to be read. */
  public void other(Path file) {
    all.add(file);
  }

  /** Whether a workbook has changed since it was named. If so, all are forgotten. */
  public boolean haveChanged() {
    boolean changed =
        workbooks.entrySet().stream()
            .anyMatch(
                one ->
                    BrokenOffSave.isOf(one.getKey())
                        || !Objects.equals(one.getValue(), State.of(one.getKey())));
    if (changed) {
      workbooks.clear();
    }
    return changed;
  }

  /** All files that were named. */
  public Collection<Path> all() {
    return all;
  }

  /** What was settled, for people. */
  public Collection<String> settled() {
    return settled;
  }
}
