package org.battenbook.saving;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The steps that change a disk. A test stops a save before each of them. */
interface Disk {
  Disk REAL = new RealDisk();

  /**
   * Makes a new file.
   *
   * @param forOwnerOnly whether nobody else may read it; else it is as new files are
   * @throws java.nio.file.FileAlreadyExistsException where there is one, a link too
   */
  OutputStream create(Path file, boolean forOwnerOnly) throws IOException;

  /** Lets those read and write a file who may do so with another one, and nobody else. */
  void permitAs(Path file, Path other) throws IOException;

  /** Waits until the content of a file is on the disk itself. */
  void sync(Path file) throws IOException;

  /** Waits until the names of files in a folder are on the disk itself. */
  void syncFolder(Path folder) throws IOException;

  /** Gives a file another name in one step; a file that has it already is replaced. */
  void rename(Path from, Path to) throws IOException;

  /** Removes a file, if it is there; of a link, the link. */
  void remove(Path file) throws IOException;

  /**
   * Locks a file, which is made where it is not there. The lock ends with the process.
   *
   * @param holder what the file then holds, at most 100 bytes: who locked it
   * @return null where it is locked already, by this process or another one
   */
  @Nullable Closeable lock(Path file, String holder) throws IOException;

  /** Who has locked a file, as they wrote it, and as whom. */
  String holder(Path file) throws IOException;
}
