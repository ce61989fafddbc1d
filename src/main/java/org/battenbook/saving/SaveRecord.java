package org.battenbook.saving;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What a save is about to do, beside its job. From when it is there until it is removed, the save
 * can be finished, and undone, by anyone who finds it.
 *
 * @param isUndone whether it was decided to undo the save
 */
record SaveRecord(Path job, List<Entry> entries, boolean isUndone) {
  private static final String VERSION = "battenbook save 1";

  /** Only workbooks are changed by a save: no record may lead to any other file. */
  private static final String ENDING = ".batten";

  /**
   * A file of a save.
   *
   * @param key tells the new content from a copy of it: the number that the system gives a file;
   *     empty where it gives none
   */
  record Entry(Replacement file, String key) {

    static Entry of(Replacement file) throws IOException {
      return new Entry(file, key(SideFile.PART.of(file.file())));
    }

    /** The number survives a restart of the machine. A copied or sent file has another one. */
    private static String key(Path file) throws IOException {
      return file.getFileSystem().supportedFileAttributeViews().contains("unix")
          ? String.valueOf(Files.getAttribute(file, "unix:ino", LinkOption.NOFOLLOW_LINKS))
          : "";
    }

    Path path() {
      return file.file();
    }

    boolean hasPart() {
      return SideFile.PART.isBeside(path());
    }

    /** Whether the new content stands beside the file. */
    boolean isStaged() throws IOException {
      return file.isStaged() && hasKey(SideFile.PART.of(path()));
    }

    /** Whether the new content has taken its place. */
    boolean isPut() throws IOException {
      return file.holdsAfter() && hasKey(path());
    }

    /** Whether there is a new content, and none that this save has staged. */
    boolean isCopied() throws IOException {
      return file.holdsAfter()
          ? !hasKey(path()) && !file.holdsBefore()
          : file.isStaged() && !hasKey(SideFile.PART.of(path()));
    }

    private boolean hasKey(Path path) throws IOException {
      return key(path).equals(key);
    }
  }

  static SaveRecord of(Path job, List<Replacement> files) throws IOException {
    List<Entry> entries = new ArrayList<>();
    for (Replacement file : files) {
      entries.add(Entry.of(file));
    }
    return new SaveRecord(job, entries, false);
  }

  SaveRecord undone() {
    return new SaveRecord(job, entries, true);
  }

  void write(Disk disk) throws IOException {
    Path record = SideFile.RECORD.of(job);
    StagedFile.of(disk, record, StagedFile.Readers.OWNER, this::writeTo).synced().put();
    disk.syncFolder(SideFile.folder(job));
  }

  private void writeTo(OutputStream stream) throws IOException {
    DataOutputStream out = new DataOutputStream(stream);
    out.writeUTF(VERSION);
    out.writeBoolean(isUndone);
    out.writeInt(entries.size());
    for (Entry entry : entries) {
      out.writeUTF(SideFile.folder(job).relativize(entry.file().file()).toString());
      out.writeUTF(entry.key());
      write(entry.file().before(), out);
      write(entry.file().after(), out);
    }
    out.flush();
  }

  private static void write(byte[] content, DataOutputStream out) throws IOException {
    out.writeInt(content.length);
    out.write(content);
  }

  /**
   * Reads the record beside a job.
   *
   * @throws IOException where it is none that was made for the files that are there
   */
  static SaveRecord read(Path job) throws IOException {
    byte[] bytes = Files.readAllBytes(SideFile.RECORD.of(job));
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
    if (!in.readUTF().equals(VERSION)) {
      throw new IOException("another version");
    }
    boolean undone = in.readBoolean();
    List<Entry> entries = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      Path file = target(job, in.readUTF());
      String key = in.readUTF();
      entries.add(new Entry(new Replacement(file, content(in), content(in)), key));
    }
    return new SaveRecord(job, entries, undone);
  }

  private static byte[] content(DataInputStream in) throws IOException {
    int length = in.readInt();
    byte[] content = in.readNBytes(length);
    if (content.length < length) {
      throw new IOException("cut off");
    }
    return content;
  }

  private static Path target(Path job, String relative) throws IOException {
    Path file = job.resolveSibling(relative).normalize();
    boolean within =
        isOf(file, job)
            && file.toString().endsWith(ENDING)
            && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
            && file.equals(file.toRealPath());
    if (!within) {
      throw new IOException("'%s' is no workbook of this job".formatted(relative));
    }
    return file;
  }

  /** A job uses files of its shop, or of its own folder; it may itself be a link to elsewhere. */
  static boolean isOf(Path file, Path job) throws IOException {
    return file.startsWith(ShopFolder.around(SideFile.folder(job)))
        || (Files.exists(job) && job.toRealPath().equals(file));
  }
}
