package org.battenbook.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Settles a save whose process was stopped: with its record written it is finished, else it is
 * undone. Done before a workbook is read.
 */
public final class BrokenOffSave {
  private static final String UNDONE =
      "an earlier run was stopped while it saved; its changes were undone, and the workbooks"
          + " are as before";

  private final Disk disk;
  private final @Nullable Claim held;

  private BrokenOffSave(Disk disk, @Nullable Claim held) {
    this.disk = disk;
    this.held = held;
  }

  /**
   * Settles the save that a file had a part in, if there is one.
   *
   * @param file where it really is
   * @param held what the caller has claimed
   * @return what was done, for people; empty where there was nothing to do
   * @throws NotWritten where there is one that cannot be settled, or is going on
   */
  public static Optional<String> settle(Path file, @Nullable Claim held) throws NotWritten {
    return settle(Disk.REAL, file, held);
  }

  static Optional<String> settle(Disk disk, Path file, @Nullable Claim held) throws NotWritten {
    try {
      return new BrokenOffSave(disk, held).settle(file);
    } catch (IOException failure) {
      throw NotWritten.of(file, failure);
    }
  }

  /** Whether a save of a file is going on, or was broken off. */
  public static boolean isOf(Path file) {
    return SideFile.RECORD.isBeside(file) || SideFile.POINTER.isBeside(file);
  }

  private Optional<String> settle(Path file) throws IOException {
    if (SideFile.RECORD.isBeside(file)) {
      return settleJob(file, file);
    }
    if (SideFile.POINTER.isBeside(file)) {
      return settleJob(jobOf(file), file);
    }
    return hasLeftovers(file) ? removeLeftovers(file) : Optional.empty();
  }

  /** A pointer to a job that does not use the file is none of ours. */
  private static Path jobOf(Path file) throws IOException {
    Path pointer = SideFile.POINTER.of(file);
    String text = new String(Files.readAllBytes(pointer), StandardCharsets.UTF_8);
    Path job = file.resolveSibling(text).normalize();
    if (!SaveRecord.isOf(file, job)) {
      throw notOurs(file, pointer);
    }
    return job;
  }

  private static NotWritten notOurs(Path file, Path side) {
    return new NotWritten(
        file,
        ("an earlier save of it was interrupted, and its files were copied or changed since; check"
                + " that the workbooks are right, then remove '%s'")
            .formatted(side));
  }

  private static boolean hasLeftovers(Path file) {
    return SideFile.PART.isBeside(file)
        || SideFile.CLAIM.isBeside(file)
        || SideFile.PART.isBeside(SideFile.RECORD.of(file))
        || SideFile.PART.isBeside(SideFile.POINTER.of(file));
  }

  /** Of a save that did not come to its record. Where they cannot be removed, they do no harm. */
  private Optional<String> removeLeftovers(Path file) {
    try (Claim claim = isHeld(file) ? claim(file) : Claim.tried(disk, file)) {
      return claim == null || isOf(file) ? Optional.empty() : removed(file);
    } catch (IOException noRight) {
      return Optional.empty();
    }
  }

  private Optional<String> removed(Path file) throws IOException {
    boolean staged = SideFile.PART.isBeside(file);
    disk.remove(SideFile.PART.of(file));
    disk.remove(SideFile.PART.of(SideFile.RECORD.of(file)));
    disk.remove(SideFile.PART.of(SideFile.POINTER.of(file)));
    return staged ? Optional.of(UNDONE) : Optional.empty();
  }

  private Optional<String> settleJob(Path job, Path file) throws IOException {
    try (Claim claim = claim(job)) {
      if (SideFile.RECORD.isBeside(claim.file())) {
        return Optional.of(settleRecorded(claim.file()));
      }
      if (!file.equals(job)) {
        return unpoint(file);
      }
    }
    return removeLeftovers(file);
  }

  /** The job has no record: the save never came to it, or is over. */
  private Optional<String> unpoint(Path file) throws IOException {
    try (Claim claim = claim(file)) {
      Optional<String> removed = removed(claim.file());
      disk.remove(SideFile.POINTER.of(file));
      return removed;
    }
  }

  private String settleRecorded(Path job) throws IOException {
    SaveRecord record = read(job);
    List<Claim> claims = new ArrayList<>();
    try {
      for (SaveRecord.Entry entry : record.entries()) {
        if (!entry.path().equals(job)) {
          claims.add(claim(entry.path()));
        }
      }
      return settle(record);
    } finally {
      claims.forEach(Claim::close);
    }
  }

  private static SaveRecord read(Path job) throws NotWritten {
    try {
      return SaveRecord.read(job);
    } catch (IOException unusable) {
      throw notOurs(job, SideFile.RECORD.of(job));
    }
  }

  private String settle(SaveRecord record) throws IOException {
    RecordedSave save = new RecordedSave(disk, record);
    if (save.isOfOtherFiles()) {
      throw notOurs(record.job(), SideFile.RECORD.of(record.job()));
    }
    if (save.canBeFinished()) {
      save.finish();
      return "an earlier run was stopped while it saved; its changes are now saved in %s"
          .formatted(names(record.entries().stream().map(SaveRecord.Entry::path).toList()));
    }
    List<Path> changedSince = save.undo();
    return changedSince.isEmpty() ? UNDONE : UNDONE + "; but " + stay(changedSince);
  }

  private static String stay(List<Path> changedSince) {
    return names(changedSince) + " changed since then; check that all is right";
  }

  private static String names(List<Path> files) {
    return files.stream()
        .map(file -> "'" + file.getFileName() + "'")
        .collect(Collectors.joining(", "));
  }

  private Claim claim(Path file) throws NotWritten {
    return held != null && isHeld(file) ? held.lent() : Claim.of(disk, file);
  }

  private boolean isHeld(Path file) {
    return held != null && held.file().equals(file);
  }
}
