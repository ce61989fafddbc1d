package org.battenbook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.battenbook.check.CheckedFormula;
import org.battenbook.operation.Operation;
import org.battenbook.syntax.Apply;
import org.junit.jupiter.api.Test;

/**
 * No stage behind the parser knows an operation by its name: each asks the operation itself. What
 * does not read the name cannot compare it.
 */
class OperationNamesTest {
  private static final Set<String> NAMES =
      Set.of(Apply.class.getName() + ".operation()", Operation.class.getName() + ".name()");

  /** Each reads a name for one purpose and compares it with nothing. */
  private static final Set<String> READERS =
      Set.of(
          // Finds the operation of a node, once for all later stages.
          "org.battenbook.check.FormulaCheck.operationOf(org.battenbook.syntax.Apply)",
          // Copies a node.
          "org.battenbook.tolerance.CopiedNode.apply(org.battenbook.syntax.Apply)",
          // Makes a node for an operation.
          "org.battenbook.tolerance.SyntheticFormula.apply(org.battenbook.operation.Operation,"
              + " org.battenbook.value.Kind, [Lorg.battenbook.syntax.Expression;)",
          "org.battenbook.tolerance.SyntheticFormula.size(org.battenbook.syntax.Expression,"
              + " org.battenbook.value.Kind)",
          // Suggests a function's name in place of one that is not known.
          "org.battenbook.check.CheckEnvironment.functionNames()");

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.battenbook");

  @Test
  void no_stage_reads_the_name_of_an_operation() {
    rule().check(PROGRAM);
  }

  @Test
  void a_stage_that_reads_one_breaks_the_rule() {
    for (Class<?> stage : List.of(ByNode.class, ByOperation.class, ByReference.class)) {
      JavaClasses planted = new ClassFileImporter().importClasses(stage);
      assertThat(rule().evaluate(planted).hasViolation()).as(stage.getSimpleName()).isTrue();
    }
  }

  @Test
  void every_reader_is_there_and_reads_one() {
    assertThat(
            PROGRAM.stream()
                .flatMap(one -> one.getAccessesFromSelf().stream())
                .filter(OperationNamesTest::isOfName)
                .map(access -> access.getOrigin().getFullName()))
        .containsAll(READERS);
  }

  private static ArchRule rule() {
    return noClasses()
        .that()
        .resideOutsideOfPackages("org.battenbook.operation..", "org.battenbook.parse..")
        .should()
        .accessTargetWhere(
            DescribedPredicate.describe(
                "are names of operations",
                access -> isOfName(access) && !READERS.contains(access.getOrigin().getFullName())));
  }

  private static boolean isOfName(JavaAccess<?> access) {
    return NAMES.contains(access.getTarget().getFullName());
  }

  /** A planted stage. */
  @SuppressWarnings("UnusedMethod")
  private static final class ByNode {
    static boolean isSum(Apply apply) {
      return apply.operation().equals("+");
    }
  }

  /** A planted stage. */
  @SuppressWarnings("UnusedMethod")
  private static final class ByOperation {
    static boolean isSum(CheckedFormula formula, Apply apply) {
      return formula.operation(apply).name().equals("+");
    }
  }

  /** A planted stage. */
  @SuppressWarnings("UnusedMethod")
  private static final class ByReference {
    static boolean isSum(Stream<Operation> operations) {
      return operations.map(Operation::name).anyMatch("+"::equals);
    }
  }
}
