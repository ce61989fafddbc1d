package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.battenbook.SpecTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The table of diagnostics, {@code spec/diagnostics.txt}: workbooks that are at fault, and all that
 * is told of each, with its code, the underlined words, the message and the repair. Written anew
 * with {@code -Dgolden=write}, and then read.
 */
class DiagnosticTableTest {
  private static final Path TABLE = Path.of("src/test/resources/spec/diagnostics.txt");
  private static final Path SOURCES = Path.of("src/main/java");

  /** Every code is one literal in lower case with a hyphen: {@code Diagnostic} takes no other. */
  private static final Pattern CODE = Pattern.compile("\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

  /** Literals that look like a code and are none. */
  private static final Set<String> OTHER_LITERALS = Set.of("root-sum-square", "yyyy-mm-dd");

  /**
   * Tables that say the same of what is refused while a line is read, or for the kinds of operands:
   * their messages stand in {@code golden/messages}, or in the table itself.
   */
  private static final List<String> OTHER_TABLES =
      List.of(
          "formulas-names",
          "formulas-numbers",
          "formulas-units",
          "formulas-operators",
          "formulas-aggregates",
          "formulas-texts",
          "statements",
          "operations-kinds");

  private static final Pattern TABLED = Pattern.compile("([a-z0-9]+(?:-[a-z0-9]+)+) (?:at|\\|) ");

  /**
   * The first takes a second process that saves. A user who may read all files, as tests may be run
   * by, never meets the second. The third is the last resort of the parser, for a slip that nothing
   * else explains: none is known.
   */
  private static final Set<String> NOT_IN_A_TABLE =
      Set.of("being-saved", "file-not-permitted", "out-of-place");

  @TempDir static Path root;

  @TestFactory
  Stream<DynamicTest> what_is_told_of_each_workbook() throws IOException {
    return DiagnosticCase.readAll(TABLE).stream()
        .map(each -> DynamicTest.dynamicTest(each.code(), () -> check(each)));
  }

  private static void check(DiagnosticCase each) throws IOException {
    assertThat(told(each)).isEqualTo(each.told());
    assertThat(each.codes()).contains(each.code());
  }

  private static String told(DiagnosticCase each) throws IOException {
    return each.run(Files.createTempDirectory(root, "case").toRealPath());
  }

  @BeforeAll
  static void writeAnewIfAsked() throws IOException {
    if (!"write".equals(System.getProperty("golden"))) {
      return;
    }
    StringBuilder table = new StringBuilder();
    for (DiagnosticCase each : DiagnosticCase.readAll(TABLE)) {
      table.append(each.with(told(each)));
    }
    Files.writeString(TABLE, table);
  }

  @Test
  void every_code_of_the_program_stands_in_a_table() throws IOException {
    Set<String> program = codesOfTheProgram();
    Set<String> told =
        DiagnosticCase.readAll(TABLE).stream()
            .flatMap(each -> each.codes().stream())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(program).containsAll(told);
    OTHER_TABLES.forEach(table -> told.addAll(codesOf(table)));
    program.removeAll(NOT_IN_A_TABLE);
    assertThat(told).containsAll(program);
  }

  /** The codes that the cells of a table speak of, {@code code at words} or {@code code | [0]}. */
  private static Set<String> codesOf(String table) {
    return SpecTable.read(table).cases().stream()
        .flatMap(cells -> TABLED.matcher(String.join(" ; ", cells)).results())
        .map(found -> found.group(1))
        .collect(Collectors.toSet());
  }

  private static Set<String> codesOfTheProgram() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).toList();
      Set<String> codes = new TreeSet<>();
      for (Path source : sources) {
        CODE.matcher(Files.readString(source)).results().forEach(m -> codes.add(m.group(1)));
      }
      codes.removeAll(OTHER_LITERALS);
      return codes;
    }
  }
}
