package org.battenbook.bench;

import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.book.Table;
import org.battenbook.cutting.Planning;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.RowMove;
import org.battenbook.workbook.Edit;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FolderLoader;
import org.battenbook.workbook.Workbook;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The museum's job: opened and filled with its plans known, and edited, always from the start. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 6, time = 2)
@Measurement(iterations = 6, time = 2)
public class MuseumBenchmark {
  private static final String JOB = "workbooks/saltmarsh-ferry-museum.batten";

  private final Planning planning = new Planning();
  private Filled filled = open();
  private int turn;

  private Filled open() {
    try {
      return Workbook.open(JOB, FolderLoader.of(JOB), planning).fill();
    } catch (Loader.Unreadable unreadable) {
      throw new IllegalStateException("run this from the top of the project", unreadable);
    }
  }

  @Setup(Level.Trial)
  public void start() {
    filled = open();
  }

  @Benchmark
  public Filled openAndFill() {
    return open();
  }

  /** No plan reads it. */
  @Benchmark
  public Filled editMarkup() {
    return filled(filled.edit(formula("markup", "%d %%".formatted(60 + ++turn % 2))));
  }

  /** Each time another one, so that no plan is known. */
  @Benchmark
  public Filled editAllowanceLeavingPlans() {
    String allowance = "0.%06d in".formatted(125_000 + ++turn % 60_000);
    return filled(filled.editLeavingPlans(formula("fitting allowance", allowance)));
  }

  @Benchmark
  public Filled editAllowancePlansKnown() {
    String allowance = ++turn % 2 == 0 ? "1/8 in" : "3/16 in";
    return filled(filled.edit(formula("fitting allowance", allowance)));
  }

  /** Two more of a piece are hung, and cut from stock that is planned from memory. */
  @Benchmark
  public Filled editQuantityPlansKnown() {
    return filled(filled.edit(quantity("6")));
  }

  @Benchmark
  public Filled editQuantityLeavingPlans() {
    return filled(filled.editLeavingPlans(quantity("%d".formatted(5 + ++turn % 2))));
  }

  /** An edit that reads its text. */
  @Benchmark
  public Filled moveRow() {
    return filled(filled.edit(new RowMove(pieces(), 0, 2)));
  }

  private FormulaEdit formula(String place, String formula) {
    return new FormulaEdit(filled.spot(place).place(), formula);
  }

  private CellEdit quantity(String count) {
    Column quantity = Objects.requireNonNull(pieces().column("quantity"));
    int row = filled.spot("quantity of Returns, punched").row();
    return new CellEdit(quantity, row, count);
  }

  private Table pieces() {
    return Objects.requireNonNull(filled.book().table("pieces"));
  }

  private static Filled filled(Edit edit) {
    return Objects.requireNonNull(edit.filled(), () -> edit.diagnostics().toString());
  }
}
