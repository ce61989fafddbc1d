package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.battenbook.Golden;
import org.battenbook.number.Rational;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cut list, from end to end. */
class CutsCommandTest {
  private static final String FIRST = "workbooks/first-frame.batten";

  /**
   * Eight slats of 20 in, three of them by 1/64 in longer: four to a lath of 96 in, so two laths.
   */
  private static final String SLATS =
      """
      workbook "Slats"
      currency USD
      page slats
        table slats by slat
          given
            slat   : text
            long   : length
            needed : count
        table laths by lath
          given
            lath    : text
            length  : length
            on hand : count
            more    : yes or no = true
            price   : money = 3 USD
        stick plan slat
          stop tolerance = 1/32 in
          parts of slats
            length   = long
            quantity = needed
          stock of laths
            length       = length
            on hand      = on hand
            can buy more = more
            price        = price
        rows of slats
          slat    | long       | needed
          "upper" | 20 1/64 in | 3
          "lower" | 20 in      | 5
        rows of laths
          lath    | length | on hand
          "long"  | 96 in  | 1
      """;

  @TempDir Path folder;

  @Test
  void cuts_shows_what_to_do_at_the_saw() throws IOException {
    Golden.assertSame("commands/cuts-first.txt", answer(0, FIRST));
    Golden.assertSame("commands/cuts-slats.txt", answer(0, slats(SLATS)));
  }

  @Test
  void merged_stops_say_which_parts_are_longer() throws IOException {
    String merged = answer(0, slats(SLATS), "--merge-stops");
    Golden.assertSame("commands/cuts-merged.txt", merged);
    assertThat(merged)
        .contains("1 instead of 2; see 'longer by' for the 5 cuts that are longer")
        .contains("1/64 in");
  }

  @Test
  void what_the_stock_is_too_small_for_is_told_first() throws IOException {
    String job = slats(SLATS.replace("yes or no = true", "yes or no = false"));
    assertThat(answer(1, job))
        .startsWith("Slats: cuts\n\nChecks that fail\n")
        .contains("there are too few sticks for 4 × lower")
        .contains("1 stick, 4 of 8 parts planned")
        .doesNotContain("To buy");
  }

  @Test
  void one_plan_can_be_listed_alone() {
    assertThat(answer(0, FIRST, "--plan", "Glazing"))
        .contains("glazing: glass")
        .doesNotContain("rail:");
    CommandRun unknown = CommandRun.of("cuts", FIRST, "--plan", "rials");
    assertThat(unknown.status()).isEqualTo(2);
    assertThat(unknown.err()).contains("no plan is called 'rials'").contains("rail");
  }

  @Test
  void a_job_without_a_plan_or_with_errors_says_so() throws IOException {
    String none = slats("workbook \"None\"\npage p\n  a = 1 in\n");
    CommandRun asked = CommandRun.of("cuts", none, "--plan", "rail");
    assertThat(asked.status()).isEqualTo(2);
    assertThat(asked.err()).contains("the job has no plan");
    assertThat(answer(0, none)).contains("the job has no plan; a workbook makes one with");
    String faulty = slats("workbook \"Faulty\"\npage p\n  a = 1 in + 1 h\n");
    assertThat(CommandRun.of("cuts", faulty).status()).isEqualTo(3);
    assertThat(answer(3, faulty, "--json")).contains("\"plans\": []");
  }

  @Test
  void why_tells_where_the_length_of_a_cut_comes_from() {
    CommandRun why = CommandRun.of("why", FIRST, "length of ash cap: 1: 1");
    assertThat(why.status()).isZero();
    assertThat(why.out()).contains("17 3/4 in");
  }

  @Test
  void json_has_every_cut_at_its_exact_place() throws IOException {
    JsonNode job = new JsonMapper().readTree(answer(0, slats(SLATS), "--json"));
    assertThat(job.fieldNames())
        .toIterable()
        .containsExactly("workbook", "file", "plans", "general", "errors", "updates");
    JsonNode plan = job.at("/plans/0");
    assertThat(plan.fieldNames())
        .toIterable()
        .containsExactly("name", "of", "materials", "stock", "failed");
    JsonNode material = plan.at("/materials/0");
    assertThat(material.fieldNames())
        .toIterable()
        .containsExactly("material", "proven", "used", "bound", "stops", "taken");
    assertThat(material.at("/used/exact").asText()).isEqualTo("6");
    assertThat(material.at("/bound")).isEqualTo(material.at("/used"));
    assertThat(material.at("/used/unit").asText()).isEqualTo("USD");
    assertThat(plan.at("/stock/0/toBuy").asInt()).isEqualTo(1);
    assertThat(plan.at("/stock/0/fromStock").asInt()).isEqualTo(1);
    assertThat(plan.at("/stock/0/price/shown").asText()).isEqualTo("3.00 USD");
    assertThat(lengthsOfCutsThatFit(material)).containsExactlyInAnyOrderElementsOf(needed());
  }

  private static List<Rational> needed() {
    List<Rational> needed = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      needed.add(i < 3 ? Rational.of(20 * 64 + 1, 64) : Rational.of(20));
    }
    return needed;
  }

  /** The lengths between marks, each stick's within its 96 in and none upon another. */
  private static List<Rational> lengthsOfCutsThatFit(JsonNode material) {
    List<Rational> lengths = new ArrayList<>();
    for (JsonNode stick : material.get("taken")) {
      Rational end = Rational.ZERO;
      for (JsonNode cut : stick.get("cuts")) {
        Rational start = Rational.parse(cut.at("/values/start/exact").asText());
        assertThat(start).isGreaterThanOrEqualTo(end);
        end = Rational.parse(cut.at("/values/end/exact").asText());
        lengths.add(end.minus(start));
      }
      assertThat(end).isLessThanOrEqualTo(Rational.of(96));
    }
    return lengths;
  }

  private String slats(String text) throws IOException {
    Path job = folder.resolve("job.batten");
    Files.writeString(job, text);
    return job.toString();
  }

  /** What is told where nobody looks on: no colors among it. */
  private static String answer(int status, String job, String... options) {
    List<String> arguments = new ArrayList<>(List.of("cuts", job));
    arguments.addAll(List.of(options));
    CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isEqualTo(status);
    assertThat(run.out()).doesNotContain("\u001b");
    return run.out();
  }
}
