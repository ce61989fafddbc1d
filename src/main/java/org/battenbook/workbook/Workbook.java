package org.battenbook.workbook;

import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.battenbook.book.Book;
import org.battenbook.book.BookAssembly;
import org.battenbook.book.FollowedFiles;
import org.battenbook.book.Loader;
import org.battenbook.check.BookCheck;
import org.battenbook.check.CheckedBook;
import org.battenbook.cutting.Planning;
import org.battenbook.evaluate.Evaluator;
import org.battenbook.evaluate.Program;
import org.battenbook.evaluate.Results;
import org.battenbook.evaluate.RowPlanner;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.tolerance.Tolerances;
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
  /**
   * How often a job is read again because a file changed meanwhile; then the last reading counts.
   */
  private static final int MOST_READINGS = 5;

  private final Book book;
  private final Reading reading;
  private final @Nullable Results results;

  private Workbook(Book book, Reading reading, @Nullable Results results) {
    this.book = book;
    this.reading = reading;
    this.results = results;
  }

  /**
   * Reads a job from a file, with all that it follows from the files around it.
   *
   * @throws Loader.Unreadable when the job itself cannot be read; for a file that it follows, the
   *     {@link #diagnostics} tell it
   */
  public static Workbook open(String job) throws Loader.Unreadable {
    return open(job, FolderLoader.of(job));
  }

  /** Reads a job through a loader. */
  public static Workbook open(String job, Loader loader) throws Loader.Unreadable {
    return open(job, loader, new Planning());
  }

  /**
   * Reads a job through a loader.
   *
   * @param planning how its plans are worked out
   */
  public static Workbook open(String job, Loader loader, RowPlanner planning)
      throws Loader.Unreadable {
    Read read = Read.of(job, loader);
    for (int again = 1; again < MOST_READINGS && loader.hasChanged(); again++) {
      read = Read.of(job, loader);
    }
    return read.put(planning.ofOneReading());
  }

  /** The files of a job, and what was found in reading them. */
  private record Read(FollowedFiles files, Diagnostics found) {

    static Read of(String job, Loader loader) throws Loader.Unreadable {
      Diagnostics found = new Diagnostics();
      return new Read(FollowedFiles.read(job, loader, found), found);
    }

    Workbook put(RowPlanner planning) {
      return DeepStack.call(() -> Workbook.put(files, found, planning, planning));
    }
  }

  /**
   * Reads a workbook again with other texts in some of its files. What did not change is not parsed
   * again, and no plan whose job is the same is planned again.
   *
   * @param texts the new text of each file that changes, by its name
   * @param plans how its planner is asked for the plans whose jobs change
   */
  static Workbook revised(
      Reading before, Map<String, String> texts, UnaryOperator<RowPlanner> plans) {
    Diagnostics found = new Diagnostics();
    FollowedFiles files = before.files().revised(texts, found);
    RowPlanner planning = before.planning().ofOneReading();
    return DeepStack.call(() -> put(files, found, planning, plans.apply(planning)));
  }

  /**
   * Assembles a workbook, checks it, and fills it.
   *
   * @param planning how its plans are worked out
   * @param now the planner to ask this time
   */
  private static Workbook put(
      FollowedFiles files, Diagnostics read, RowPlanner planning, RowPlanner now) {
    Diagnostics found = read.copy();
    Book book = BookAssembly.assemble(files, found.isRefused() ? new Diagnostics() : found);
    Program program = program(book, found);
    Results results = program == null ? null : Evaluator.fill(program, now, found);
    return new Workbook(book, new Reading(files, planning, found.inOrder()), results);
  }

  /** The compiled book; absent where it is at fault, or too large to be checked. */
  private static @Nullable Program program(Book book, Diagnostics found) {
    if (found.isRefused()) {
      return null;
    }
    CheckedBook checked = BookCheck.check(book, found);
    if (found.hasFaults()) {
      return null;
    }
    Tolerances tolerances = Tolerances.of(checked, found);
    return found.hasFaults() ? null : Program.compile(tolerances, found);
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
    return reading.diagnostics();
  }

  /** Whether it cannot be filled as it stands. */
  public boolean hasFaults() {
    return results == null;
  }

  /** The new text of each file that an edit changed, by the text as it was loaded. */
  public Map<SourceText, String> revisions() {
    return reading.files().revisions();
  }

  /**
   * The workbook with every value worked out.
   *
   * @throws IllegalStateException when it {@link #hasFaults}
   */
  public Filled fill() {
    if (results == null) {
      throw new IllegalStateException("a workbook with errors cannot be filled");
    }
    return new Filled(results, reading, List.of());
  }
}
