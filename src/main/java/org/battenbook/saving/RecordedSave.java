package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * A save whose record is written: it is finished or undone, by the process that began it or by one
 * that found it. Whoever does so has claimed all its files. Each step may be the last that a
 * process takes; the next one goes on from there.
 */
final class RecordedSave {
  private final Disk disk;
  private final SaveRecord save;

  RecordedSave(Disk disk, SaveRecord save) {
    this.disk = disk;
    this.save = save;
  }

  /** Whether each file can still take its new content, or has taken it. */
  boolean canBeFinished() throws IOException {
    for (SaveRecord.Entry entry : save.entries()) {
      boolean isWaiting = entry.isStaged() && entry.file().holdsBefore();
      boolean isDone = !entry.hasPart() && !entry.file().holdsBefore();
      if (!isWaiting && !isDone) {
        return false;
      }
    }
    return !save.isUndone();
  }

  /**
   * Whether the files are copies of those that the save was about, such as those of a sent folder.
   */
  boolean isOfOtherFiles() throws IOException {
    for (SaveRecord.Entry entry : save.entries()) {
      if (entry.isCopied()) {
        return true;
      }
    }
    return false;
  }

  /**
   * Puts each new content into its place.
   *
   * @throws IOException where a file was changed just now, or cannot be replaced; all are as they
   *     were before then
   */
  void finish() throws IOException {
    try {
      for (SaveRecord.Entry entry : save.entries()) {
        put(entry);
      }
    } catch (IOException failure) {
      undo(failure);
      throw failure;
    }
    try {
      forget();
    } catch (IOException leftThere) {
      // All is written. The next command finds nothing to do but this.
    }
  }

  private void undo(IOException reason) throws IOException {
    try {
      undo();
    } catch (IOException failure) {
      failure.addSuppressed(reason);
      throw new NotWritten(
          save.job(), "some of its files have changed; the next command on this job repairs them");
    }
  }

  private void put(SaveRecord.Entry entry) throws IOException {
    if (entry.hasPart()) {
      entry.file().checkHoldsBefore();
      disk.rename(SideFile.PART.of(entry.path()), entry.path());
    }
  }

  /**
   * Gives each file its earlier content. A file that was changed since then stays as it is.
   *
   * @return the files that were changed after they had taken the new content
   */
  List<Path> undo() throws IOException {
    save.undone().write(disk);
    List<Path> changedSince = new ArrayList<>();
    for (SaveRecord.Entry entry : save.entries()) {
      if (entry.isPut()) {
        Content before = Content.of(entry.file().before());
        StagedFile.of(disk, entry.path(), StagedFile.Readers.AS_BEFORE, before).synced().put();
      } else if (entry.hasPart()) {
        disk.remove(SideFile.PART.of(entry.path()));
      } else if (!entry.file().holdsBefore()) {
        changedSince.add(entry.path());
      }
    }
    forget();
    return changedSince;
  }

  /** The record goes once the files are on the disk, and the pointers to it last. */
  private void forget() throws IOException {
    for (Path folder : folders()) {
      disk.syncFolder(folder);
    }
    disk.remove(SideFile.RECORD.of(save.job()));
    disk.syncFolder(SideFile.folder(save.job()));
    for (SaveRecord.Entry entry : save.entries()) {
      disk.remove(SideFile.POINTER.of(entry.path()));
    }
  }

  private Set<Path> folders() {
    Set<Path> folders = new TreeSet<>();
    save.entries().forEach(entry -> folders.add(SideFile.folder(entry.path())));
    return folders;
  }
}
