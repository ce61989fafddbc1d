package org.battenbook.saving;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The computer's own disk. */
final class RealDisk implements Disk {
  /** Beyond any content: where locks bind all, a locked byte cannot be read. */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  /** More than any holder's text: a larger file is something else, and stays as it is. */
  private static final int MOST_OF_HOLDER = 100;

  /** What this process has locked. */
  private static final Set<Path> LOCKED = ConcurrentHashMap.newKeySet();

  private static final FileAttribute<?> OWNER_ONLY =
      PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));

  private static final Set<PosixFilePermission> OF_GROUP =
      PosixFilePermissions.fromString("---rwx---");

  @Override
  public OutputStream create(Path file, boolean forOwnerOnly) throws IOException {
    Set<StandardOpenOption> isNew =
        EnumSet.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
    return Channels.newOutputStream(
        forOwnerOnly && hasPermissions(file)
            ? FileChannel.open(file, isNew, OWNER_ONLY)
            : FileChannel.open(file, isNew));
  }

  private static boolean hasPermissions(Path file) {
    return file.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  @Override
  public void permitAs(Path file, Path other) throws IOException {
    if (hasPermissions(file)) {
      PosixFileAttributes model = Files.readAttributes(other, PosixFileAttributes.class);
      Set<PosixFilePermission> permissions = EnumSet.copyOf(model.permissions());
      if (!isOfGroup(file, model)) {
        permissions.removeAll(OF_GROUP);
      }
      Files.setPosixFilePermissions(file, permissions);
    }
  }

  /** Puts a file into the group of another one; only a member of the group may do so. */
  private static boolean isOfGroup(Path file, PosixFileAttributes model) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    if (view.readAttributes().group().equals(model.group())) {
      return true;
    }
    try {
      view.setGroup(model.group());
      return true;
    } catch (IOException notPermitted) {
      return false;
    }
  }

  @Override
  public void sync(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  @Override
  public void syncFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOfThisSystem) {
      // Windows opens no folder, and needs no such step.
    }
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void remove(Path file) throws IOException {
    Files.deleteIfExists(file);
  }

  /**
   * {@inheritDoc}
   *
   * <p>On many systems a process loses its lock of a file as soon as it closes the file under any
   * other handle. So nothing here opens a file that this process has locked.
   */
  @Override
  public @Nullable Closeable lock(Path file, String holder) throws IOException {
    if (!LOCKED.add(file)) {
      return null;
    }
    FileChannel locked = null;
    try {
      locked = locked(file, holder);
    } finally {
      if (locked == null) {
        LOCKED.remove(file);
      }
    }
    return locked == null ? null : letGo(locked, file);
  }

  private static Closeable letGo(FileChannel locked, Path file) {
    return () -> {
      try (locked) {
        LOCKED.remove(file);
      }
    };
  }

  private static @Nullable FileChannel locked(Path file, String holder) throws IOException {
    FileChannel channel;
    try {
      channel =
          FileChannel.open(
              file,
              StandardOpenOption.CREATE,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
    } catch (AccessDeniedException ofAnotherUser) {
      return lockedOfAnotherUser(file, holder, ofAnotherUser);
    }
    boolean locked = false;
    try {
      locked =
          channel.tryLock(LOCKED_BYTE, 1, false) != null && isStillThere(channel, file, holder);
    } finally {
      if (!locked) {
        channel.close();
      }
    }
    return locked ? channel : null;
  }

  /** The lock file of a dead process of another user cannot be written, but removed. */
  private static @Nullable FileChannel lockedOfAnotherUser(
      Path file, String holder, AccessDeniedException denied) throws IOException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw denied;
    }
    try (FileChannel channel =
            FileChannel.open(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
        FileLock lock = channel.tryLock(LOCKED_BYTE, 1, true)) {
      if (lock == null) {
        return null;
      }
      Files.delete(file);
    }
    return locked(file, holder);
  }

  /**
   * Writes who holds a file. Before it was locked, it may have been removed, and another made in
   * its place: then that one does not change its size as this one does.
   */
  private static boolean isStillThere(FileChannel channel, Path file, String holder)
      throws IOException {
    if (channel.size() > MOST_OF_HOLDER) {
      throw new FileSystemException(
          file.toString(), null, "'%s' is in the way; look at it, and remove it".formatted(file));
    }
    byte[] content = holder.getBytes(StandardCharsets.UTF_8);
    try {
      channel.truncate(0);
      boolean isEmptied = Files.size(file) == 0;
      channel.write(ByteBuffer.wrap(content));
      return isEmptied && Files.size(file) == content.length;
    } catch (NoSuchFileException removed) {
      return false;
    }
  }

  @Override
  public String holder(Path file) throws IOException {
    if (!LOCKED.add(file)) {
      return "this process";
    }
    try {
      return "%s of %s".formatted(Files.readString(file).strip(), Files.getOwner(file).getName());
    } finally {
      LOCKED.remove(file);
    }
  }
}
