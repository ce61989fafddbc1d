package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.book.Page;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The shipped workbooks against values from outside: each job in {@code acceptance} follows the
 * standards and is filled, and the table beside it says what its values come to and who says so.
 */
class StandardsTest {
  private static final Path WORKBOOKS = ShippedFiles.WORKBOOKS;
  private static final Path ACCEPTANCE = Path.of("src/test/resources/acceptance");

  private static Path name(String path) {
    return Path.of(path).getFileName();
  }

  private static Filled fill(Path job) {
    return filled(ShippedFiles.open(job));
  }

  private static Filled filled(Workbook workbook) {
    assertThat(workbook.diagnostics()).isEmpty();
    return workbook.fill();
  }

  private static Filled museum() {
    return fill(WORKBOOKS.resolve("saltmarsh-ferry-museum.batten"));
  }

  private static List<String> firing(Filled filled) {
    return filled.cautions().stream().filter(Verdict::isYes).map(Verdict::text).toList();
  }

  private static Stream<Path> jobs(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".batten")).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @TestFactory
  Stream<DynamicContainer> every_value_agrees_with_its_source() {
    return jobs(ACCEPTANCE)
        .map(job -> DynamicContainer.dynamicContainer(name(job.toString()).toString(), rows(job)));
  }

  private static Stream<DynamicTest> rows(Path job) {
    Filled filled = fill(job);
    return lines(job).stream().skip(1).map(line -> row(filled, List.of(line.split("\t", -1))));
  }

  private static List<String> lines(Path job) {
    try {
      return Files.readAllLines(Path.of(job.toString().replace(".batten", ".tsv")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static DynamicTest row(Filled filled, List<String> cells) {
    Expected expected = new Expected(cells.get(1));
    return DynamicTest.dynamicTest(
        "%s is %s: %s".formatted(cells.get(0), cells.get(1), cells.get(2)),
        () ->
            assertThat(filled.find(cells.get(0)).value())
                .as(cells.get(0))
                .matches(expected::agrees, "is " + expected.written()));
  }

  @TestFactory
  Stream<DynamicTest> every_shipped_and_tested_job_is_filled_without_a_fault_or_a_broken_rule() {
    return Stream.of(jobs(WORKBOOKS), jobs(WORKBOOKS.resolve("standards")), jobs(ACCEPTANCE))
        .flatMap(jobs -> jobs)
        .map(job -> DynamicTest.dynamicTest(job.toString(), () -> holds(fill(job))));
  }

  private static void holds(Filled filled) {
    assertThat(filled.faults()).isEmpty();
    assertThat(filled.requirements().stream().filter(v -> !v.isYes()).map(Verdict::text)).isEmpty();
    assertThat(filled.cautions())
        .allMatch(verdict -> verdict.value().isKnown() || isStillToBeFilledIn(verdict.value()));
  }

  private static boolean isStillToBeFilledIn(Value value) {
    return value instanceof Value.Waiting waiting && !waiting.atFault();
  }

  @Test
  void the_museum_hangs_frames_in_both_units_on_four_walls() {
    Filled museum = museum();
    assertThat(museum.find("frames").exact()).isEqualTo("24");
    assertThat(museum.find("frames of Stairway").exact()).isEqualTo("6");
  }

  @Test
  void a_frame_that_is_made_keeps_its_size_and_says_what_it_contradicts() {
    Filled museum = museum();
    assertThat(museum.find("top rail of The Heron, elevation").shown().text())
        .isEqualTo("24 3/16 in");
    assertThat(museum.find("rabbet opening width of The Heron, elevation").exact())
        .isEqualTo("44029/2032");
    assertThat(firing(museum))
        .contains(
            "The Heron, elevation: rails entered as 24 3/16 in and 19 3/8 in; the formula gives 24"
                + " 1/4 in and 19 7/16 in. Later sizes use the entered rails.");
  }

  @Test
  void what_is_too_small_for_a_cleat_or_too_narrow_behind_is_cautioned() {
    assertThat(firing(museum()))
        .anyMatch(text -> text.startsWith("Season ticket of Miss Vale: too small for plywood 1/2"))
        .anyMatch(text -> text.contains("Add a block or strainer."));
  }

  @Test
  void every_allowance_says_what_it_is_for_and_where_it_comes_from() {
    Page allowances =
        fill(WORKBOOKS.resolve("standards/allowances.batten")).book().page("allowances");
    assertThat(allowances).isNotNull();
    assertThat(allowances.lines())
        .hasSizeGreaterThan(40)
        .allMatch(
            line ->
                line.layer()
                    .note()
                    .matches(".+; (common practice|publi|the shop's own|a publi).*"));
  }

  @Test
  void glazing_on_bare_art_or_the_wrong_moulding_under_a_panel_breaks_a_requirement() {
    assertThat(broken("style | moulding | glazing", "\"floated panel\" | \"ash cap\" | \"glass\""))
        .containsExactlyInAnyOrder(
            "Test: style floated panel does not go with ash cap. A floated panel needs a moulding"
                + " with a ledge; every other style needs one without.",
            "Test: ledge 0 in must be more than float gap 1/4 in, or it does not reach under the"
                + " panel. Use a moulding with a wider ledge.",
            "Test: the glazing would touch the art. Put a mat or a spacer between them.");
  }

  @Test
  void a_frame_measured_too_small_or_glazing_too_large_breaks_a_requirement() {
    assertThat(broken("moulding | top rail | glazing width", "\"ash cap\" | 15 1/4 in | 13 1/8 in"))
        .containsExactlyInAnyOrder(
            "Test: package 13 in x 15 in does not fit rabbet opening 12 3/4 in x 15 1/8 in. Make"
                + " the rails longer or the package smaller.",
            "Test: glazing 13 1/8 in x 15 in does not fit rabbet opening 12 3/4 in x 15 1/8 in."
                + " Cut it smaller.");
  }

  @Test
  void a_mat_too_small_for_its_window_breaks_a_requirement() {
    assertThat(
            broken(
                "moulding | mat outside width | mat outside height", "\"ash cap\" | 7 in | 15 in"))
        .hasSize(2)
        .anyMatch(
            text ->
                text.startsWith(
                    "Test: window group 7 1/2 in x 9 1/2 in does not fit mat 7 in x 15 in."))
        .anyMatch(
            text ->
                text.startsWith("Test: paper 8 in x 10 in must be smaller than mat 7 in x 15 in"));
  }

  @Test
  void a_rail_longer_than_its_stick_breaks_a_requirement() {
    assertThat(broken("moulding | border", "\"ash cap\" | 50 in"))
        .contains(
            "Test: rails 110 1/8 in and 112 1/8 in with end trims 1/2 in do not fit a stick"
                + " of 8 ft. Use a longer stick.");
  }

  /** The rules that an 8 by 10 piece breaks when its row says this. */
  private static List<String> broken(String headings, String cells) {
    String job =
        """
        workbook "Test"
        follows "standards/frame-shop.batten"
        lengths in 1/16 in
        page pieces
          rows of pieces
            title | width | height | %s
            "Test" | 8 in | 10 in | %s
        """
            .formatted(headings, cells);
    return filled(ShippedFiles.open(job)).requirements().stream()
        .filter(Verdict::isNo)
        .map(Verdict::text)
        .toList();
  }
}
