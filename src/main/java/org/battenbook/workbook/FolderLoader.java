package org.battenbook.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.battenbook.book.Loader;
import org.battenbook.listing.BadList;
import org.battenbook.listing.Listing;
import org.battenbook.picture.NoPicture;
import org.battenbook.picture.PictureSize;
import org.battenbook.saving.Claim;
import org.battenbook.saving.NotWritten;
import org.battenbook.saving.SteadyFiles;
import org.battenbook.source.NearNames;
import org.battenbook.source.SourceText;
import org.battenbook.source.Utf8Reader;
import org.jspecify.annotations.Nullable;

/**
 * Reads a job from its file, and the files it follows from its {@link JobFolder} or from the {@link
 * ShippedStandards}. It cannot read files outside that folder, not even through links.
 */
public final class FolderLoader implements Loader {
  private final Path job;
  private final int mostBytes;
  private final SteadyFiles files;

  private FolderLoader(Path job, int mostBytes, @Nullable Claim held) {
    this.job = job;
    this.mostBytes = mostBytes;
    this.files = new SteadyFiles(held);
  }

  /** A loader for a job and for the files beside and below it. */
  public static FolderLoader of(Path job) {
    return of(job, Integer.MAX_VALUE);
  }

  /**
   * A loader for a job by its path as a person wrote it.
   *
   * @throws Unreadable where no file can have such a name
   */
  public static FolderLoader of(String job) throws Unreadable {
    return of(job, null);
  }

  /**
   * A loader for a job by its path as a person wrote it.
   *
   * @param held the claim on the job, where whoever reads it has one
   * @throws Unreadable where no file can have such a name
   */
  public static FolderLoader of(String job, @Nullable Claim held) throws Unreadable {
    try {
      return new FolderLoader(Path.of(job), Integer.MAX_VALUE, held);
    } catch (InvalidPathException invalid) {
      throw new Unreadable("no-such-file", "'%s' cannot be the name of a file".formatted(job), "");
    }
  }

  static FolderLoader of(Path job, int mostBytes) {
    return new FolderLoader(job, mostBytes, null);
  }

  /** Every file that was read. */
  public Collection<Path> filesRead() {
    return files.all();
  }

  /** What was done about saves that had been broken off, for people. */
  public Collection<String> settledSaves() {
    return files.settled();
  }

  @Override
  public boolean hasChanged() {
    return files.haveChanged();
  }

  @Override
  public SourceText load(String path, @Nullable SourceText from) throws Unreadable {
    try {
      return from == null ? loadJob(path) : loadFollowed(path, from);
    } catch (InvalidPathException invalid) {
      throw new Unreadable("no-such-file", "'%s' cannot be the name of a file".formatted(path), "");
    }
  }

  private SourceText loadJob(String path) throws Unreadable {
    return read(job, path, slashed(job));
  }

  private SourceText loadFollowed(String path, SourceText from) throws Unreadable {
    if (ShippedStandards.isOne(from.name())) {
      return shipped(path);
    }
    JobFolder folder = jobFolder(path, FileKind.WORKBOOK);
    if (!JobFolder.isInStandards(path)) {
      return loadFollowed(path, folder, beside(folder, path, from, FileKind.WORKBOOK));
    }
    Optional<Path> own = folder.besideOwnStandards(Path.of(from.name()));
    return own.isPresent()
        ? loadFollowed(path, folder, folder.fileIn(own.get(), path, FileKind.WORKBOOK))
        : shipped(String.valueOf(Path.of(path).getFileName()));
  }

  private SourceText loadFollowed(String path, JobFolder folder, Path real) throws Unreadable {
    if (!Files.isDirectory(real)) {
      checkEnding(path, path);
      checkEnding(String.valueOf(real.getFileName()), path);
    }
    return read(real, path, nameOf(real, folder));
  }

  private static SourceText shipped(String file) throws Unreadable {
    SourceText text = ShippedStandards.text(file);
    if (text == null) {
      throw new Unreadable(
          "no-such-file",
          "the standards that come with Battenbook have no file '%s'".formatted(file),
          NearNames.question(file, ShippedStandards.names()));
    }
    return text;
  }

  private static void checkEnding(String name, String written) throws Unreadable {
    if (!FileKind.WORKBOOK.isNameOfOne(name)) {
      throw new Unreadable(
          "follows-ending",
          "'%s' is not a workbook: its name must end in .batten".formatted(written),
          "name a file that ends in .batten, or rename this one");
    }
  }

  @Override
  public Listing list(String path, SourceText from, @Nullable String page) throws Unreadable {
    try {
      Listing.checkEnding(path);
      JobFolder folder = jobFolder(path, FileKind.LIST);
      Path real = beside(folder, path, from, FileKind.LIST);
      files.other(real);
      byte[] bytes = bytes(real, path, FileKind.LIST);
      return Listing.read(path, bytes, page).named(nameOf(real, folder));
    } catch (BadList bad) {
      throw new Unreadable(bad.code(), bad.message(), bad.repair());
    } catch (InvalidPathException invalid) {
      throw new Unreadable("no-such-file", "'%s' cannot be the name of a file".formatted(path), "");
    }
  }

  @Override
  public PictureSize picture(String path, SourceText from) throws Unreadable {
    try {
      JobFolder folder = jobFolder(path, FileKind.PICTURE);
      return PictureSize.read(head(beside(folder, path, from, FileKind.PICTURE), path));
    } catch (NoPicture no) {
      throw new Unreadable("no-picture", "'%s' %s".formatted(path, no.message()), "");
    } catch (InvalidPathException invalid) {
      throw new Unreadable("no-such-file", "'%s' cannot be the name of a file".formatted(path), "");
    }
  }

  /** The first bytes of an image, which tell its size. */
  private byte[] head(Path file, String written) throws Unreadable {
    if (!Files.isRegularFile(file)) {
      throw new Unreadable("not-a-file", "'%s' is not an ordinary file".formatted(written), "");
    }
    files.other(file);
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(FileKind.PICTURE.mostBytes());
    } catch (IOException failure) {
      throw unreadable(file, written, failure, FileKind.PICTURE);
    }
  }

  /** The real file that another names, in the job's folder or below it. */
  private static Path beside(JobFolder folder, String path, SourceText from, FileKind sought)
      throws Unreadable {
    return folder.file(path, Path.of(from.name()), sought);
  }

  private JobFolder jobFolder(String path, FileKind sought) throws Unreadable {
    try {
      return JobFolder.of(job);
    } catch (IOException failure) {
      throw unreadable(job, path, failure, sought);
    }
  }

  /** As the job's user would write it. */
  private String nameOf(Path real, JobFolder folder) {
    Path way = folder.real().relativize(real);
    Path written = folderAsWritten().resolve(way);
    String name = slashed(way.startsWith("..") ? shortened(written, real) : written);
    return ShippedStandards.isOne(name) ? "./" + name : name;
  }

  /** A way up through a link may lead elsewhere when it is shortened. */
  private static Path shortened(Path written, Path real) {
    Path plain = written.normalize();
    return leadsTo(real, plain) ? plain : real;
  }

  private static boolean leadsTo(Path real, Path written) {
    try {
      return written.toRealPath().equals(real);
    } catch (IOException none) {
      return false;
    }
  }

  static Path folderOf(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    return folder == null ? file.toAbsolutePath() : folder;
  }

  private Path folderAsWritten() {
    Path parent = job.getParent();
    return parent == null ? Path.of("") : parent;
  }

  private SourceText read(Path file, String written, String name) throws Unreadable {
    try {
      files.workbook(file);
    } catch (NotWritten unsettled) {
      throw new Unreadable("being-saved", String.valueOf(unsettled.getMessage()), "");
    }
    return SourceText.of(name, text(bytes(file, written, FileKind.WORKBOOK), written));
  }

  private static String text(byte[] bytes, String written) throws Unreadable {
    try {
      return new Utf8Reader(written).text(bytes);
    } catch (Utf8Reader.NotUtf8 no) {
      throw new Unreadable("not-utf-8", no.message(), no.repair());
    }
  }

  /** One byte past the bound is enough to know that a file is too large. */
  private byte[] bytes(Path file, String written, FileKind sought) throws Unreadable {
    if (Files.isDirectory(file)) {
      throw folder(file, written, sought);
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new Unreadable("not-a-file", "'%s' is not an ordinary file".formatted(written), "");
    }
    int most = Math.min(mostBytes, sought.mostBytes());
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw new Unreadable(
            "file-too-large",
            "'%s' is larger than the maximum of %s MB".formatted(written, most >> 20),
            sought.smaller());
      }
      return bytes;
    } catch (IOException failure) {
      throw unreadable(file, written, failure, sought);
    }
  }

  static Unreadable unreadable(Path file, String written, IOException failure) {
    return unreadable(file, written, failure, FileKind.WORKBOOK);
  }

  static Unreadable unreadable(Path file, String written, IOException failure, FileKind sought) {
    if (failure instanceof NoSuchFileException && JobFolder.isDangling(file)) {
      return JobFolder.dangling(written);
    }
    if (failure instanceof NoSuchFileException) {
      return new Unreadable(
          "no-such-file",
          MissingFolder.message(file, written),
          MissingFolder.questionOr(MissingFile.cure(file, sought), file));
    }
    if (failure instanceof AccessDeniedException) {
      return new Unreadable(
          "file-not-permitted",
          "'%s' may not be read".formatted(written),
          "ask its owner for permission");
    }
    return new Unreadable(
        "unreadable-file", "'%s' cannot be read: %s".formatted(written, reason(failure)), "");
  }

  private static String reason(IOException failure) {
    String reason =
        failure instanceof FileSystemException inFile ? inFile.getReason() : failure.getMessage();
    return reason == null ? "the computer gives no reason" : reason;
  }

  private static Unreadable folder(Path folder, String written, FileKind sought) {
    List<String> inside = filesIn(folder, sought);
    String repair =
        inside.isEmpty()
            ? "name " + sought.one()
            : "name one of the %s in it: %s".formatted(sought.several(), String.join(", ", inside));
    return new Unreadable("is-a-folder", "'%s' is a folder".formatted(written), repair);
  }

  static List<String> filesIn(Path folder, FileKind sought) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .map(file -> file.getFileName().toString())
          .filter(sought::isNameOfOne)
          .sorted()
          .toList();
    } catch (IOException noList) {
      return List.of();
    }
  }

  private static String slashed(Path path) {
    return path.toString().replace(path.getFileSystem().getSeparator(), "/");
  }
}
