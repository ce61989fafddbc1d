package org.battenbook.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** New content for a file. */
final class Replacement {
  private final Path file;
  private final byte[] before;
  private final byte[] after;

  /**
   * New content for a file.
   *
   * @param file where it really is
   * @param before what it holds now
   */
  Replacement(Path file, byte[] before, byte[] after) {
    this.file = file;
    this.before = before.clone();
    this.after = after.clone();
  }

  Path file() {
    return file;
  }

  byte[] before() {
    return before.clone();
  }

  byte[] after() {
    return after.clone();
  }

  boolean holdsBefore() throws IOException {
    return holds(before);
  }

  void checkHoldsBefore() throws IOException {
    if (!holdsBefore()) {
      throw new NotWritten(file, "it was changed after it was read; run this again");
    }
  }

  boolean holdsAfter() throws IOException {
    return holds(after);
  }

  boolean isStaged() throws IOException {
    Path part = SideFile.PART.of(file);
    return SideFile.PART.isBeside(file) && Arrays.equals(Files.readAllBytes(part), after);
  }

  private boolean holds(byte[] content) throws IOException {
    return Files.exists(file) && Arrays.equals(Files.readAllBytes(file), content);
  }
}
