package org.battenbook.bench;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.export.SpreadsheetExport;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
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

/** The same wide book filled here, and recalculated by Apache POI's evaluator from its export. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SpreadsheetBenchmark {
  @Param({"1000"})
  int pieces;

  private Workbook workbook = TextLoader.of("workbook \"none\"").open();
  private XSSFWorkbook exported = new XSSFWorkbook();

  @Setup
  public void export() throws IOException {
    workbook = TextLoader.of(WideBook.text(pieces)).open();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    SpreadsheetExport.write(workbook.fill(), file);
    exported = new XSSFWorkbook(new ByteArrayInputStream(file.toByteArray()));
  }

  @Benchmark
  public Filled fill() {
    return workbook.fill();
  }

  @Benchmark
  public FormulaEvaluator recalculateExport() {
    FormulaEvaluator evaluator = exported.getCreationHelper().createFormulaEvaluator();
    evaluator.evaluateAll();
    return evaluator;
  }
}
