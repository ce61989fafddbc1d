package org.battenbook.saving;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
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
import org.jspecify.annotations.Nullable;

/** The computer's own disk. */
final class RealDisk implements Disk {
  /** Beyond any content: where locks bind all, a locked byte cannot be read. */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  /** More than any holder's text: a larger file is something else, and stays as it is. */
  private static final int MOST_OF_HOLDER = 100;

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

  @Override
  public @Nullable Closeable lock(Path file, String holder) throws IOException {
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
      return lockOfAnotherUser(file, holder, ofAnotherUser);
    }
    boolean locked = false;
    try {
      locked = isLocked(channel, file, holder);
    } finally {
      if (!locked) {
        channel.close();
      }
    }
    return locked ? channel : null;
  }

  /** The lock file of a dead process of another user cannot be written, but removed. */
  private @Nullable Closeable lockOfAnotherUser(
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
    } catch (OverlappingFileLockException ofThisProcess) {
      return null;
    }
    return lock(file, holder);
  }

  /** The file may have been removed, and another made, before the lock was there. */
  private static boolean isLocked(FileChannel channel, Path file, String holder)
      throws IOException {
    try {
      if (channel.tryLock(LOCKED_BYTE, 1, false) == null) {
        return false;
      }
      if (channel.size() > MOST_OF_HOLDER) {
        throw new FileSystemException(
            file.toString(), null, "'%s' is in the way; look into it, and remove it".formatted(file));
      }
      byte[] content = holder.getBytes(StandardCharsets.UTF_8);
      channel.truncate(0).write(ByteBuffer.wrap(content));
      return Files.readString(file).equals(holder);
    } catch (OverlappingFileLockException ofThisProcess) {
      return false;
    } catch (NoSuchFileException removed) {
      return false;
    }
  }
}
