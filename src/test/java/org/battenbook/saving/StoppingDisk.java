package org.battenbook.saving;

import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A disk that lets so many steps happen, and then something happens at the next one. */
final class StoppingDisk implements Disk {
  private final Event event;
  private final List<Closeable> locks = new ArrayList<>();
  private final Set<Path> unsynced = new HashSet<>();
  private final @Nullable Path lastRename;
  private int left;

  private enum Event {
    /**
     * The process is stopped: half of what it writes is written, nothing that it does afterwards
     * has an effect, and its locks are gone.
     */
    KILL,
    /** Besides, contents that were not synced are lost. */
    POWER_CUT,
    /** The step fails, and the process goes on. */
    FAILURE
  }

  private StoppingDisk(int steps, Event event, @Nullable Path lastRename) {
    this.left = steps;
    this.event = event;
    this.lastRename = lastRename;
  }

  private StoppingDisk(int steps, Event event) {
    this(steps, event, null);
  }

  static StoppingDisk killedAfter(int steps) {
    return new StoppingDisk(steps, Event.KILL);
  }

  static StoppingDisk cutOffAfter(int steps) {
    return new StoppingDisk(steps, Event.POWER_CUT);
  }

  static StoppingDisk failingOnceAfter(int steps) {
    return new StoppingDisk(steps, Event.FAILURE);
  }

  /** The process is stopped when a file is about to get its new content. */
  static StoppingDisk killedBeforePutting(Path file) {
    return new StoppingDisk(Integer.MAX_VALUE, Event.KILL, file);
  }

  /** A disk as any other, but that nobody waits for it. */
  static StoppingDisk never() {
    return killedAfter(Integer.MAX_VALUE);
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
    if (event == Event.FAILURE) {
      if (left == -1) {
        throw new IOException("no space left");
      }
    } else if (left < 0) {
      stop();
      throw new Stopped();
    }
  }

  private void stop() throws IOException {
    for (Closeable lock : locks) {
      lock.close();
    }
    if (event == Event.POWER_CUT) {
      for (Path file : unsynced) {
        Files.write(file, new byte[0]);
      }
      unsynced.clear();
    }
  }

  @Override
  public OutputStream create(Path file, boolean forOwnerOnly) throws IOException {
    step();
    unsynced.add(file);
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
    unsynced.remove(file);
  }

  @Override
  public void syncFolder(Path folder) throws IOException {
    step();
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    if (to.equals(lastRename)) {
      left = 0;
    }
    step();
    REAL.rename(from, to);
    if (unsynced.remove(from)) {
      unsynced.add(to);
    }
  }

  @Override
  public void remove(Path file) throws IOException {
    step();
    REAL.remove(file);
    unsynced.remove(file);
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

  @Override
  public String holder(Path file) throws IOException {
    return REAL.holder(file);
  }
}
