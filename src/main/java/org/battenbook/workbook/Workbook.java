package org.battenbook.workbook;

import java.util.List;
import org.battenbook.book.Book;
import org.battenbook.book.BookAssembly;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.Loader;
import org.battenbook.book.OpenedRows;
import org.battenbook.check.BookCheck;
import org.battenbook.check.CheckedBook;
import org.battenbook.cutting.Planning;
import org.battenbook.evaluate.Evaluator;
import org.battenbook.evaluate.Program;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.jspecify.annotations.Nullable;

/**
 * A workbook that has been read and checked, ready to be filled.
 *
 * <pre>{@code
 * Workbook job = Workbook.open("workbooks/saltmarsh-ferry-museum.batten");
 * if (!job.hasFaults()) {
 *   Filled filled = job.fill();
 *   System.out.println(filled.find("top rail of Tide chart, north").shown().text());
 * }
 * }</pre>
 */
public final class Workbook {
  private final Book book;
  private final List<Diagnostic> diagnostics;
  private final @Nullable Program program;

  private Workbook(Book book, List<Diagnostic> diagnostics, @Nullable Program program) {
    this.book = book;
    this.diagnostics = diagnostics;
    this.program = program;
  }

  /**
   * Reads a job from a file, with all that it follows from the files around it.
   *
   * @throws Loader.Unreadable when the job itself cannot be read; what it follows is told of among
   *     the {@link #diagnostics}
   */
  public static Workbook open(String job) throws Loader.Unreadable {
    return open(job, FolderLoader.of(job));
  }

  /** Reads a job by way of a loader. */
  public static Workbook open(String job, Loader loader) throws Loader.Unreadable {
    return open(job, loader, new Planning());
  }

  /**
   * Reads a job by way of a loader.
   *
   * @param planning how its plans are worked out
   */
  public static Workbook open(String job, Loader loader, Planning planning)
      throws Loader.Unreadable {
    Diagnostics reading = new Diagnostics();
    FollowedFiles files = FollowedFiles.read(job, loader, reading);
    return DeepStack.call(() -> put(files, reading, planning));
  }

  private static Workbook put(FollowedFiles files, Diagnostics reading, Planning planning) {
    Diagnostics counting = new Diagnostics();
    OpenedRows opened = new Rounds(files, reading, counting, planning).opened();
    Diagnostics found = reading.copy();
    Book book = BookAssembly.assemble(files, opened, found);
    CheckedBook checked = BookCheck.check(book, found);
    found.addAll(counting);
    Program program = found.hasFaults() ? null : Program.compile(checked, found);
    return new Workbook(book, found.inOrder(), program);
  }

  public String title() {
    return book.title();
  }

  /** The job's file as its user named it. */
  public String file() {
    return book.source().name();
  }

  /** Everything that was found wrong or is worth reading, in the order of the text. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }

  /** Whether it cannot be filled as it stands. */
  public boolean hasFaults() {
    return program == null;
  }

  /**
   * Works out every line of every page.
   *
   * @throws IllegalStateException when it {@link #hasFaults}
   */
  public Filled fill() {
    if (program == null) {
      throw new IllegalStateException("a workbook with faults cannot be filled");
    }
    return new Filled(Evaluator.fill(program));
  }
}
