package org.battenbook.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.operation.SpreadsheetText.Content;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The spreadsheet text of every operation, worked out by Apache POI's evaluator over cells, gives
 * what the exact meaning gives.
 */
class SpreadsheetAgreementTest {
  private static final int CASES = 400;
  private static final List<String> CELLS = List.of("A1", "B1", "C1");

  private final XSSFWorkbook book = new XSSFWorkbook();
  private final Row row = book.createSheet().createRow(0);

  @AfterEach
  void close() throws IOException {
    book.close();
  }

  @TestFactory
  Stream<DynamicTest> arithmetic_agrees() {
    return Stream.of("+", "-", "*", "/", "negate", "min", "max", "abs")
        .map(name -> law(name, random -> List.of(size(random), size(random))));
  }

  @TestFactory
  Stream<DynamicTest> comparisons_agree_on_the_limit_and_beside_it() {
    return Stream.of("=", "<>", "<", "<=", ">", ">=")
        .map(
            name ->
                law(
                    name,
                    random -> {
                      Rational limit = size(random);
                      Rational beside = Rational.of(random.nextInt(3) - 1, 640);
                      return List.of(limit, limit.plus(beside));
                    }));
  }

  @TestFactory
  Stream<DynamicTest> roundings_agree_on_steps_on_ties_and_between() {
    return Stream.of("rounded up", "rounded down", "rounded", "rounded evenly")
        .map(
            name ->
                law(
                    name,
                    random -> {
                      Rational step = step(random);
                      Rational parts = Rational.of(random.nextInt(40_000) - 20_000, 4);
                      Rational off = Rational.of(random.nextInt(3) - 1, 1000);
                      return List.of(parts.plus(off).times(step), step);
                    }));
  }

  @TestFactory
  Stream<DynamicTest> roots_and_angles_agree() {
    return Stream.of("sqrt", "sin", "cos", "tan", "atan")
        .map(name -> law(name, random -> List.of(Rational.of(random.nextInt(89 * 64), 64))));
  }

  private interface Draw {
    List<Rational> numbers(Random random);
  }

  private interface Law {
    void hold(Operation operation, List<Rational> numbers);
  }

  private DynamicTest law(String name, Draw draw) {
    return law(name, draw, this::agree);
  }

  private DynamicTest law(String name, Draw draw, Law law) {
    long seed = 20260314L + name.hashCode();
    return DynamicTest.dynamicTest(
        name + ", seed " + seed,
        () -> {
          Random random = new Random(seed);
          for (int i = 0; i < CASES; i++) {
            law.hold(Operations.find(name).orElseThrow(), draw.numbers(random));
          }
        });
  }

  private void agree(Operation operation, List<Rational> drawn) {
    List<Rational> numbers = drawn.subList(0, Math.min(drawn.size(), operation.arity().most()));
    Value expected = operation.apply(numbers.stream().map(n -> amount(operation, n)).toList());
    List<SpreadsheetText> literals = numbers.stream().map(SpreadsheetText::number).toList();
    List<SpreadsheetText> cells = cells(numbers);
    List<SpreadsheetText> mixed = new ArrayList<>(cells);
    mixed.set(mixed.size() - 1, literals.get(mixed.size() - 1));
    for (List<SpreadsheetText> operands : List.of(cells, mixed, literals)) {
      assertAgrees(expected, operation.spreadsheet(operands), operation.name() + " " + numbers);
    }
  }

  private List<SpreadsheetText> cells(List<Rational> numbers) {
    List<SpreadsheetText> cells = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      row.createCell(i).setCellValue(numbers.get(i).toNearestDouble());
      cells.add(SpreadsheetText.reference(CELLS.get(i), Content.NUMBER));
    }
    return cells;
  }

  private void assertAgrees(Value expected, SpreadsheetText formula, String why) {
    Cell cell = row.createCell(9);
    cell.setCellFormula(formula.toString());
    CellValue found = book.getCreationHelper().createFormulaEvaluator().evaluate(cell);
    String as = why + " by " + formula;
    if (expected instanceof Value.Amount amount) {
      assertClose(amount.quantity().number(), found.getNumberValue(), as);
    } else if (expected instanceof Value.YesNo yesNo) {
      assertThat(found.getBooleanValue()).as(as).isEqualTo(yesNo.yes());
    } else {
      assertThat(found.getCellType()).as(as).isEqualTo(CellType.ERROR);
    }
  }

  private static void assertClose(Real expected, double found, String as) {
    double allowed = Math.max(1, Math.abs(expected.toDouble())) * 1e-12 + expected.bound();
    assertThat(Math.abs(found - expected.toDouble())).as(as).isLessThanOrEqualTo(allowed);
  }

  private static Value amount(Operation operation, Rational number) {
    boolean ofAngle = List.of("sin", "cos", "tan").contains(operation.name());
    return new Value.Amount(new Quantity(number, ofAngle ? Dimension.ANGLE : Dimension.NONE));
  }

  /** A size as at the bench, in inches: sixteenths, or millimeters, either side of zero. */
  private static Rational size(Random random) {
    Rational count = Rational.of(random.nextInt(4_000) - 2_000);
    return count.times(random.nextBoolean() ? Rational.of(1, 16) : Rational.of(5, 127));
  }

  private static Rational step(Random random) {
    List<Rational> steps =
        List.of(
            Rational.of(1, 16),
            Rational.of(1, 10),
            Rational.of(3, 10),
            Rational.of(5, 127),
            Rational.of(1, 100),
            Rational.of(1, 3));
    return steps.get(random.nextInt(steps.size()));
  }

  @TestFactory
  Stream<DynamicTest> where_the_texts_would_not_come_to_the_exact_result_the_operation_says_so() {
    return Stream.of("rounded up", "rounded down", "rounded", "rounded evenly", "<", "<=", "=")
        .map(
            name ->
                law(
                    name,
                    random -> {
                      Rational step = Rational.of(1, 16);
                      Rational halves = Rational.of(random.nextInt(400) - 200, 2);
                      Rational off = Rational.of(random.nextInt(41) - 20, 10_000_000);
                      boolean rounds = name.startsWith("rounded");
                      return rounds
                          ? List.of(halves.plus(off).times(step), step)
                          : List.of(halves, halves.plus(off));
                    },
                    this::agreeUnlessToldOtherwise));
  }

  private void agreeUnlessToldOtherwise(Operation operation, List<Rational> numbers) {
    List<Value> values = numbers.stream().map(n -> amount(operation, n)).toList();
    if (operation.agreesInSpreadsheet(values)) {
      agree(operation, numbers);
    } else {
      assertThat(numbers.get(0)).as("never where both are the same").isNotEqualTo(numbers.get(1));
    }
  }
}
