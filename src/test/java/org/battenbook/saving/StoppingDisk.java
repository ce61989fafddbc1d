package org.battenbook.saving;

import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A disk that lets so many steps happen. At the next one the process is stopped: half of what it
 * writes is written, nothing that it does afterwards has an effect, and its locks are gone. Or that
 * one step fails, and the process goes on.
 */
final class StoppingDisk implements Disk {
  private final boolean goesOn;
  private final List<Closeable> locks = new ArrayList<>();
  private int left;

  private StoppingDisk(int steps, boolean goesOn) {
    this.left = steps;
    this.goesOn = goesOn;
  }

  static StoppingDisk after(int steps) {
    return new StoppingDisk(steps, false);
  }

  static StoppingDisk failingOnceAfter(int steps) {
    return new StoppingDisk(steps, true);
  }

  /** The end of a process. */
  static final class Stopped extends Error {
    private static final long serialVersionUID = 1;
  }

  boolean wasReached() {
    return left < 0;
  }

  private void step() throws IOException {
    left--;
    if (goesOn && left == -1) {
      throw new IOException("no space left");
    }
    if (!goesOn && left < 0) {
      for (Closeable lock : locks) {
        lock.close();
      }
      throw new Stopped();
    }
  }

  @Override
  public OutputStream create(Path file, boolean forOwnerOnly) throws IOException {
    step();
    return new FilterOutputStream(REAL.create(file, forOwnerOnly)) {
      @Override
      public void write(byte[] bytes, int from, int count) throws IOException {
        if (left == 0) {
          out.write(bytes, from, count / 2);
        }
        step();
        out.write(bytes, from, count);
      }
    };
  }

  @Override
  public void permitAs(Path file, Path other) throws IOException {
    step();
    REAL.permitAs(file, other);
  }

  @Override
  public void sync(Path file) throws IOException {
    step();
    REAL.sync(file);
  }

  @Override
  public void syncFolder(Path folder) throws IOException {
    step();
    REAL.syncFolder(folder);
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    step();
    REAL.rename(from, to);
  }

  @Override
  public void remove(Path file) throws IOException {
    step();
    REAL.remove(file);
  }

  @Override
  public @Nullable Closeable lock(Path file, String holder) throws IOException {
    step();
    Closeable lock = REAL.lock(file, holder);
    if (lock != null) {
      locks.add(lock);
    }
    return lock;
  }
}
