package org.battenbook.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Changes several workbooks of a job: all of them or none, whatever happens on the way. New
 * contents are staged and on the disk before a {@link SaveRecord} is written; then each takes its
 * place. A process that finds the record finishes the save, or undoes it, with {@link
 * BrokenOffSave}.
 */
public final class Save {
  private final Disk disk;
  private final Path job;
  private final List<Replacement> files = new ArrayList<>();

  private Save(Disk disk, Path job) {
    this.disk = disk;
    this.job = job;
  }

  /** A save of a job's files, by whoever has claimed the job. */
  public static Save of(Claim job) {
    return of(Disk.REAL, job);
  }

  static Save of(Disk disk, Claim job) {
    return new Save(disk, job.file());
  }

  /**
   * Adds a file.
   *
   * @param before what it is known to hold; a file that holds anything else is not changed
   * @throws NotWritten when it cannot be changed
   */
  public Save replacing(Path file, byte[] before, byte[] after) throws NotWritten {
    try {
      Path real = file.toRealPath();
      refuse(file, real);
      files.add(new Replacement(real, before, after));
      return this;
    } catch (IOException failure) {
      throw NotWritten.of(file, failure);
    }
  }

  private static void refuse(Path file, Path real) throws IOException {
    if (!Files.isWritable(real)) {
      throw new NotWritten(file, "it is write-protected; ask its owner");
    }
    boolean counted = real.getFileSystem().supportedFileAttributeViews().contains("unix");
    if (counted && Files.getAttribute(real, "unix:nlink") instanceof Integer names && names > 1) {
      throw new NotWritten(
          file,
          "it has a second name (a hard link) that would keep the old text; replace it with a copy");
    }
  }

  /**
   * Writes them.
   *
   * @throws NotWritten when one cannot be written, or is not as it was; all are as they were then,
   *     or the message says what else
   */
  public void write() throws NotWritten {
    files.sort(Comparator.comparing(Replacement::file));
    List<Claim> claims = new ArrayList<>();
    try {
      for (Replacement one : others()) {
        claims.add(Claim.of(disk, one.file()));
      }
      new RecordedSave(disk, stage()).finish();
    } catch (IOException failure) {
      throw NotWritten.of(job, failure);
    } finally {
      claims.forEach(Claim::close);
    }
  }

  private List<Replacement> others() {
    return files.stream().filter(one -> !one.file().equals(job)).toList();
  }

  /** Up to here nothing has changed; with the record written, all is sure to change. */
  private SaveRecord stage() throws IOException {
    for (Replacement one : files) {
      if (SideFile.RECORD.isBeside(one.file()) || SideFile.POINTER.isBeside(one.file())) {
        throw new NotWritten(one.file(), "an earlier save of it was interrupted; run this again");
      }
    }
    try {
      for (Replacement one : files) {
        one.checkHoldsBefore();
        Content content = Content.of(one.after());
        StagedFile.of(disk, one.file(), StagedFile.Readers.AS_BEFORE, content).synced();
      }
      for (Replacement one : others()) {
        pointToJob(one.file());
      }
      for (Path folder : folders()) {
        disk.syncFolder(folder);
      }
      for (Replacement one : files) {
        one.checkHoldsBefore();
      }
      SaveRecord record = SaveRecord.of(job, files);
      record.write(disk);
      return record;
    } catch (IOException failure) {
      unstage(failure);
      throw failure;
    }
  }

  /** So that whoever meets the file by another job finds the save too. */
  private void pointToJob(Path file) throws IOException {
    byte[] path = SideFile.folder(file).relativize(job).toString().getBytes(StandardCharsets.UTF_8);
    StagedFile.of(disk, SideFile.POINTER.of(file), StagedFile.Readers.OWNER, Content.of(path))
        .synced()
        .put();
  }

  private Set<Path> folders() {
    Set<Path> folders = new TreeSet<>();
    files.forEach(one -> folders.add(SideFile.folder(one.file())));
    return folders;
  }

  private void unstage(IOException reason) {
    try {
      for (Replacement one : files) {
        disk.remove(SideFile.PART.of(one.file()));
        disk.remove(SideFile.POINTER.of(one.file()));
      }
    } catch (IOException leftThere) {
      reason.addSuppressed(leftThere);
    }
  }
}
