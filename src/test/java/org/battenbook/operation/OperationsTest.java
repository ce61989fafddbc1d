package org.battenbook.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.battenbook.value.Kind;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every operation, by the spec tables. */
class OperationsTest {

  @TestFactory
  Stream<DynamicTest> every_operation_has_its_exact_meaning() {
    return SpecTable.read("operations-values")
        .each(
            cells -> {
              Operation operation = Operations.find(cells.get(0)).orElseThrow();
              List<Written> operands = Written.all(cells.get(1));
              assertThat(
                      operation.check(operands.stream().map(Written::operand).toList(), silent()))
                  .as("kind")
                  .isNotEqualTo(Kind.UNKNOWN);
              Value value = operation.apply(operands.stream().map(Written::value).toList());
              if (value instanceof Value.Fault fault) {
                assertThat(fault.code()).isEqualTo(cells.get(2));
                assertThat(fault.message()).doesNotEndWith(".").isNotBlank();
              } else {
                assertThat(value).isEqualTo(Written.one(cells.get(2)).value());
              }
            });
  }

  @TestFactory
  Stream<DynamicTest> every_operation_has_its_kind_rule() {
    return SpecTable.read("operations-kinds")
        .each(
            cells -> {
              Operation operation = Operations.find(cells.get(0)).orElseThrow();
              List<String> said = new ArrayList<>();
              Kind kind =
                  operation.check(
                      Written.all(cells.get(1)).stream().map(Written::operand).toList(),
                      (code, at, message, repair) ->
                          said.addAll(List.of(code, at.toString(), message, repair)));
              assertThat(kind.words()).isEqualTo(cells.get(2));
              assertThat(String.join(" | ", said)).isEqualTo(cells.get(3));
            });
  }

  @TestFactory
  Stream<DynamicTest> every_operation_has_its_spreadsheet_text() {
    return SpecTable.read("operations-texts")
        .each(
            cells -> {
              Operation operation = Operations.find(cells.get(0)).orElseThrow();
              List<Written> operands = Written.all(cells.get(1));
              assertThat(
                      operation.spreadsheet(operands.stream().map(Written::spreadsheet).toList()))
                  .hasToString(cells.get(2));
            });
  }

  @Test
  void the_catalogue_holds_the_whole_language_and_no_more() {
    assertThat(Operations.operators())
        .extracting(Operation::name)
        .containsExactly(
            "+",
            "-",
            "*",
            "/",
            "^",
            "negate",
            "=",
            "<>",
            "<",
            "<=",
            ">",
            ">=",
            "and",
            "or",
            "not",
            "rounded up",
            "rounded down",
            "rounded",
            "rounded evenly",
            "±");
    assertThat(Operations.functions())
        .extracting(Operation::name)
        .containsExactly(
            "sqrt",
            "abs",
            "min",
            "max",
            "sin",
            "cos",
            "tan",
            "atan",
            "pixels across",
            "pixels down");
    assertThat(Operations.find("round")).isEmpty();
  }

  @Test
  void stages_ask_an_operation_what_it_is() {
    assertThat(which(Operation::isSign)).containsExactly("negate", "±");
    assertThat(which(Operation::isEquality)).containsExactly("=");
    assertThat(which(Operation::isConjunction)).containsExactly("and");
    assertThat(which(Operation::isRounding))
        .containsExactly("rounded up", "rounded down", "rounded", "rounded evenly");
    assertThat(which(operation -> operation.worsening().isPresent()))
        .containsExactly("<", "<=", ">", ">=");
  }

  private static List<String> which(Predicate<Operation> asked) {
    return Stream.concat(Operations.operators().stream(), Operations.functions().stream())
        .filter(asked)
        .map(Operation::name)
        .toList();
  }

  @Test
  void an_operand_of_unknown_kind_is_not_complained_of() {
    Operation.Operand unknown = new Operation.Operand(Kind.UNKNOWN, "x");
    Operation.Operand text = new Operation.Operand(Kind.TEXT, "title");
    for (String name : List.of("+", "-", "*", "/", "^", "rounded", "min")) {
      Operation operation = Operations.find(name).orElseThrow();
      assertThat(operation.check(List.of(unknown, text), silent())).isEqualTo(Kind.UNKNOWN);
    }
    assertThat(Operations.find("<").orElseThrow().check(List.of(unknown, text), silent()))
        .isEqualTo(Kind.YES_NO);
  }

  @Test
  void and_stops_at_a_no_and_or_at_a_yes() {
    Operation and = Operations.find("and").orElseThrow();
    Operation or = Operations.find("or").orElseThrow();
    assertThat(and.isDecidedBy(new Value.YesNo(false))).isTrue();
    assertThat(and.isDecidedBy(new Value.YesNo(true))).isFalse();
    assertThat(or.isDecidedBy(new Value.YesNo(true))).isTrue();
    assertThat(or.isDecidedBy(new Value.YesNo(false))).isFalse();
  }

  @Test
  void a_number_that_grows_past_its_digits_is_a_fault_of_the_value() {
    Operation power = Operations.find("^").orElseThrow();
    Value grown = Written.one("1000003").value();
    Value nine = Written.one("9").value();
    for (int i = 0; i < 5 && grown.isKnown(); i++) {
      grown = power.apply(List.of(grown, nine));
    }
    assertThat(grown)
        .isInstanceOfSatisfying(
            Value.Fault.class, f -> assertThat(f.code()).isEqualTo("too-many-digits"));
  }

  private static Operation.Complaints silent() {
    return (code, at, message, repair) -> {
      throw new AssertionError(code + ": " + message);
    };
  }
}
