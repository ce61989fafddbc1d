package org.battenbook.bench;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.cutting.Planning;
import org.battenbook.evaluate.Evaluator;
import org.battenbook.evaluate.Results;
import org.battenbook.source.Diagnostics;
import org.battenbook.workbook.Edit;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The wide book: opened, filled whole, filled again after one allowance and after one row. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class WideBookBenchmark {
  private static final List<String> ALLOWANCES = List.of("1/8 in", "3/16 in");
  private static final List<String> WIDTHS = List.of("297 mm", "11 1/2 in");

  @Param({"1000", "10000", "100000"})
  int pieces;

  private String text = "";
  private Filled filled = TextLoader.of("workbook \"none\"").open().fill();
  private @Nullable Results results;
  private int turn;

  @Setup
  public void open() {
    text = WideBook.text(pieces);
    filled = TextLoader.of(text).open().fill();
  }

  @Benchmark
  public Workbook openText() {
    return TextLoader.of(text).open();
  }

  /** What comes out is kept until the next, as an edit's is: else the collector has less to do. */
  @Benchmark
  public Results fill() {
    Diagnostics none = new Diagnostics();
    results = Evaluator.fill(filled.results().program(), new Planning(), none);
    return Objects.requireNonNull(results, () -> none.inOrder().toString());
  }

  @Benchmark
  public Edit editAllowance() {
    Line allowance = (Line) filled.spot("fitting allowance").place();
    return kept(filled.withFormula(allowance, ALLOWANCES.get(++turn & 1)));
  }

  @Benchmark
  public Edit editRow() {
    Column width = Objects.requireNonNull(filled.book().table("pieces")).columns().get(1);
    return kept(filled.withCell(width, pieces / 2, WIDTHS.get(++turn & 1)));
  }

  private Edit kept(Edit edit) {
    filled = Objects.requireNonNull(edit.filled(), () -> edit.diagnostics().toString());
    return edit;
  }
}
