package org.battenbook.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.battenbook.source.Diagnostic;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.Verdict;
import org.battenbook.workbook.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be planned says what is wrong with it and what to do. */
class PlanRefusalTest {
  private static final String STICKS =
      """
      currency USD
      page cutting
        kerf = 1/8 in
        table parts by part
          given
            part    : text
            long    : length = 20 in
            needed  : count = 4
            set     : text = ""
            sets    : count = 3
          worked out
            asked   = needed
            size    = long
            blade   = kerf
        table stock by stick
          given
            stick   : text
            length  : length = 96 in
            price   : money = 0 USD
            rack    : count = 0
            more    : yes or no = true
        stick plan rail
          planning time = 10 s
          parts of parts
            length      = size
            quantity    = asked
            kerf        = blade
            matched set = set
            sets        = sets
          stock of stock
            length       = length
            price        = price
            on hand      = rack
            can buy more = more
        rows of parts
          part | set
          "a"  | ""
        rows of stock
          stick  | price | more
          "8 ft" | 0 USD | true
      """;

  private static final String SHEETS =
      """
      currency USD
      page cutting
        table panes by pane
          given
            pane   : text
            wide   : length = 10 in
            high   : length = 20 in
            needed : count = 4
          worked out
            broad  = wide
        table stock by sheet
          given
            sheet : text
            wide  : length = 20 in
            high  : length = 40 in
            blade : length = 0 in
            edge  : length = 0 in
            least : length = 6 in
        sheet plan glazing
          planning time = 1 s
          stages = 3
          parts of panes
            width    = broad
            height   = high
            quantity = needed
          stock of stock
            width          = wide
            height         = high
            kerf           = blade
            trim           = edge
            minimum offcut = least
        rows of panes
          pane | high
          "a"  | 20 in
        rows of stock
          sheet   | least
          "large" | 6 in
      """;

  private static List<String> failed(String job) {
    Workbook workbook = TextLoader.of(job).open();
    assertThat(workbook.diagnostics()).filteredOn(Diagnostic::isFault).isEmpty();
    Filled filled = workbook.fill();
    return filled.requirements().stream().filter(Verdict::isNo).map(Verdict::text).toList();
  }

  private static String changed(String job, String text, String other) {
    assertThat(job).contains(text);
    return job.replace(text, other);
  }

  /** Each by one text of the job that is written otherwise, and what is told then. */
  @ParameterizedTest
  @CsvSource(
      delimiterString = "::",
      textBlock =
          """
          kerf = 1/8 in :: kerf = -1 in :: a: its blade must be at least 0
          kerf = 1/8 in :: kerf = 30 in :: part 'a' is shorter than the kerf; correct its length or the kerf
          = kerf :: = kerf * sqrt(2) :: a: its blade is approximate; round it up to a step
          = long :: = long * sqrt(2) :: a: its size is approximate; round it up to a step
          = long :: = long - 20 in :: the length of part 'a' must be more than 0
          = needed :: = needed / 8 :: a: its asked must be a whole number, 0 or more; it is 1/2
          = needed :: = needed - 8 :: a: its asked must be a whole number, 0 or more; it is -4
          = needed :: = needed * 1000000000000 :: a: its asked is too large; it is 4000000000000
          = needed :: = needed * 1000000 :: one plan can have at most 100,000 pieces; there are 4,000,000. Split the job
          length = 20 in :: length :: a: its size cannot be calculated: enter long of "a"
          time = 10 s :: time = 0 s :: the planning time must be more than 0 s
          time = 10 s :: time = -1 s :: the planning time must be more than 0 s
          time = 10 s :: time = 13 h :: the planning time of a workbook must be at most 5 min; write a shorter one, or allow it with --planning-time "13 h"
          time = 10 s :: time = sqrt(2) * 1 s :: its planning time is approximate; write it as a number
          0 USD | true :: -3 USD | true :: stock '8 ft': its price must be at least 0; there is no stock for it; enter stock in 'stock'
          0 USD | true :: 0 USD | false :: there is no stock for it; enter stock in 'stock'
          length = 96 in :: length = 0 in :: the length of stock '8 ft' must be more than 0; there is no stock for it; enter stock in 'stock'
          length = 96 in :: length :: stock '8 ft': its length cannot be calculated: enter length of "8 ft"; there is no stock for it; enter stock in 'stock'
          a"  | "" :: a"  | "f" :: the matched set f: 4 of "a" cannot be shared among 3 sets; enter a multiple of the number of sets
          """)
  void what_a_stick_plan_cannot_be_made_of_is_told(String text, String other, String told) {
    assertThat(failed(STICKS)).isEmpty();
    assertThat(failed(changed(STICKS, text, other))).containsExactly("rail: " + told + ".");
  }

  @ParameterizedTest
  @CsvSource(
      delimiterString = "::",
      textBlock =
          """
          broad  = wide :: broad  = wide * sqrt(2) :: a: its broad is approximate; round it up to a step
          broad  = wide :: broad  = wide - 10 in :: width and height of part 'a' must be more than 0
          = 4 :: = 1000000 :: one plan can have at most 10,000 pieces; there are 1,000,000. Split the job
          stages = 3 :: stages = 5/2 * 1 :: its stages has an error: a count must be a whole number, 0 or more; it is 5/2: round it in its formula
          stages = 3 :: stages = 0 - 1 :: its stages has an error: a count must be a whole number, 0 or more; it is -1: write 'max(0, …)' around its formula
          time = 1 s :: time = 0 s :: the planning time must be more than 0 s
          blade : length = 0 in :: blade : length = -1 in :: stock 'large': its blade must be at least 0
          edge  : length = 0 in :: edge  : length = -1 in :: the trims of a sheet must be at least 0; there is no stock for it; enter stock in 'stock'
          large" | 6 in :: large" | -6 in :: the minimum offcut of stock 'large' must be at least 0; there is no stock for it; enter stock in 'stock'
          """)
  void what_a_sheet_plan_cannot_be_made_of_is_told(String text, String other, String told) {
    assertThat(failed(SHEETS)).isEmpty();
    assertThat(failed(changed(SHEETS, text, other))).containsExactly("glazing: " + told + ".");
  }

  @Test
  void any_number_of_stages_may_be_a_large_one() {
    assertThat(failed(changed(SHEETS, "stages = 3", "stages = 1000000000000"))).isEmpty();
  }

  // One round parts a sheet into strips as long as it is, and a pane of 10 by 20 in is none.
  @Test
  void a_pane_that_takes_more_rounds_of_cuts_says_so() {
    String job =
        changed(SHEETS, "stages = 3", "stages = 1").replace("high = 40 in", "high = 41 in");
    assertThat(failed(changed(job, "\"a\"  | 20 in", "\"a\"  | 19 in")))
        .containsExactly(
            "glazing: a: no sheet fits it in 1 round of parallel cuts; allow more rounds.");
  }

  @Test
  void what_has_no_price_beside_what_has_one_is_left_out() {
    assertThat(failed(STICKS + "    \"4 ft\" | 3 USD | true\n"))
        .containsExactly(
            "rail: stock '8 ft': it has no price, but other stock has;"
                + " enter its price, or how many are on hand.");
  }

  private static final int[] PRIMES = {
    1009, 1013, 1019, 1021, 1031, 1033, 1039, 1049, 1051, 1061, 1063, 1069, 1087, 1091, 1093, 1097,
    1103, 1109, 1117, 1123, 1129, 1151, 1153, 1163, 1171, 1181, 1187, 1193, 1201, 1213, 1217, 1223,
    1229, 1231, 1237, 1249, 1259, 1277, 1279, 1283
  };

  /** Parts of 20 in and a fraction that no other has. */
  private static String unlike(String job, int count) {
    StringBuilder rows = new StringBuilder(job).append("rows of parts\n  part | long\n");
    for (int i = 0; i < count; i++) {
      rows.append("  \"p%d\" | 20 1/%d in%n".formatted(i, PRIMES[i]));
    }
    return rows.toString();
  }

  @Test
  void parts_of_unlike_fractions_are_refused_in_words_of_their_sizes() {
    assertThat(failed(unlike(STICKS, 12)))
        .containsExactly(
            "rail: the lengths have no common step;" + " round them to one, such as 1/1000.");
    assertThat(failed(unlike(STICKS, 40)))
        .containsExactly(
            "rail: the total of its parts has more than 100 digits;"
                + " round their sizes up to a step, such as 1/64 in.");
  }

  @Test
  void a_size_of_too_many_digits_is_refused_at_its_part() {
    String fine = "= long + 1 in / 1%s7 / 1%s9".formatted("0".repeat(60), "0".repeat(60));
    assertThat(failed(changed(STICKS, "= long", fine)))
        .containsExactly(
            "rail: a: its size has more than 100 digits; round it up to a step, such as 1/64 in.");
  }

  @Test
  void two_plans_have_two_names() {
    String again =
        """
          sheet plan glazing
            parts of panes
              width    = broad
              height   = high
              quantity = needed
            stock of stock
              width  = wide
              height = high
        """;
    assertThat(TextLoader.of(SHEETS + again).open().diagnostics())
        .filteredOn(Diagnostic::isFault)
        .extracting(Diagnostic::repair)
        .containsExactly("give this one a different name");
  }
}
