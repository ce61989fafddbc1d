package org.battenbook.bind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a name means where it is used, and what is said of one that means nothing. */
class NameBinderTest {
  private static final String PAGES =
      """
      workbook "t"
      page p
        x    = 3 in
        only = 5 in
        own  = x
        table t by k
          given
            k : text
            x : length
          worked out
            column = x
            line   = p.x
            far    = q.x
            lone   = only
        rows of t
          k   | x
          "a" | 7 in
      page q
        x    = 4 in
        own  = x
        both = p.x + q.x
        lone = only
      """;

  @ParameterizedTest
  @CsvSource({
    "p.own, 3", // a line of the page comes before a line of another page
    "q.own, 4",
    "both, 7",
    "q.lone, 5", // a line that is the only one of its name is seen from everywhere
    "column of a, 7", // a column comes before a line
    "line of a, 3",
    "far of a, 4",
    "lone of a, 5",
  })
  void a_name_means_the_nearest(String place, String exact) {
    assertThat(TextLoader.of(PAGES).open().fill().find(place).exact()).isEqualTo(exact);
  }

  @Test
  void an_argument_comes_before_a_line_and_a_column() {
    Filled filled =
        TextLoader.of(
                """
                workbook "t"
                to find twice(x : length) = 2 * x
                page p
                  x = 3 in
                  y = twice(5 in)
                """)
            .open()
            .fill();
    assertThat(filled.find("y").exact()).isEqualTo("10");
  }

  /** Else a new line of a job would change what a formula of the shop means. */
  @Test
  void a_formula_of_the_shop_does_not_see_the_lines_of_the_job() {
    String shop =
        """
        workbook "shop"
        page shop
          x = 3 in
          y = x + 1 in
        """;
    String job =
        """
        workbook "job"
        follows "shop.batten"
        page job
          x = 100 in
          z = y
        """;
    Workbook workbook = new TextLoader().with("shop.batten", shop).with("job.batten", job).open();
    assertThat(workbook.fill().find("z").exact()).isEqualTo("4");
    String asks = shop + "  w = added\n  v = job.added\n  u = adde\n";
    Workbook unseen =
        new TextLoader()
            .with("shop.batten", asks)
            .with("job.batten", job + "  added = 1 in\n")
            .open();
    assertThat(repairs(unseen))
        .allSatisfy(repair -> assertThat(repair).doesNotContain("added", "adde"))
        .hasSize(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          xx         | did you mean 'x'?
          only x     | is an operator missing between 'only' and 'x'?
          face face  | is an operator missing between 'face' and 'face'?
          fce        | did you mean 'face'?
          onyl       | did you mean 'only'?
          yes        | write 'true' or 'false' in a formula
          mm         | if you mean the unit, write it after a number: 1 mm
          width      | it is a column of 'other': use it in that table's rows, after a row and a dot, or with 'over'
          sum of face over other | to read the outer row inside 'over other', write 'this.face'
          """)
  void an_unknown_name_is_answered(String formula, String repair) {
    Workbook workbook =
        TextLoader.of(
                """
                workbook "t"
                page p
                  x    = 3 in
                  only = 5 in
                  table t by k
                    given
                      k    : text
                      face : length
                    worked out
                      y = %s
                  table other by k
                    given
                      k     : text
                      width : length
                """
                    .formatted(formula))
            .open();
    assertThat(repairs(workbook)).containsExactly(repair);
  }

  @Test
  void an_argument_with_a_name_beside_it_lacks_an_operator() {
    Workbook workbook =
        TextLoader.of(
                """
                workbook "t"
                to find twice(lip : length) = lip x
                page p
                  x = 3 in
                  y = twice(5 in)
                """)
            .open();
    assertThat(repairs(workbook)).contains("is an operator missing between 'lip' and 'x'?");
  }

  private static List<String> repairs(Workbook workbook) {
    return workbook.diagnostics().stream().map(one -> one.repair()).toList();
  }
}
