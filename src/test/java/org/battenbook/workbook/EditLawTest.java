package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Place;
import org.battenbook.book.Table;
import org.battenbook.check.CheckedPlace;
import org.battenbook.source.Diagnostic;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edit and fill again = fill from scratch; and no more is run than an edit feeds. */
class EditLawTest {
  private static final int ROWS = 2600;

  private static final int KINDS = 5;

  /** A job at random whose text can be written again after each edit. */
  private static final class Job {
    String allowance = "1/8 in";
    String step = "1/16 in";
    final List<String> widths = new ArrayList<>();
    final List<String> overrides = new ArrayList<>();
    final List<Integer> kinds = new ArrayList<>();
    final List<String> extras = new ArrayList<>();
    private final Drawn drawn;

    Job(Random random) {
      for (int i = 0; i < ROWS; i++) {
        widths.add(width(random));
        overrides.add("");
        kinds.add(random.nextInt(KINDS));
      }
      for (int i = 0; i < KINDS; i++) {
        extras.add(width(random));
      }
      drawn = new Drawn(random);
    }

    String text() {
      StringBuilder text = new StringBuilder();
      text.append("workbook \"law\"\npage p\n  allowance = ").append(allowance);
      text.append("\n  step = ").append(step);
      text.append(
          """

            twice = 2 * allowance
            table kinds by kind
              given
                kind  : text
                extra : length
              worked out
                group = sum of width over pieces where kind = this
          %s\
            table pieces by title
              given
                title : text
                kind  : row of kinds
                width : length
              worked out
                left side = width + allowance
                right side = width + twice
                rail = left side + right side rounded up to step
                at = if first row then 0 in else above.at + above.rail
                share = rail / total
          %s\
            lines
              total = sum of rail over pieces
              widest = largest of width over pieces
              many = count of pieces where rail > 40 in
          %s\
            rows of kinds
              kind | extra
          """
              .formatted(drawn.ofKinds, drawn.ofPieces, drawn.lines));
      for (int i = 0; i < KINDS; i++) {
        text.append("    \"k%d\" | %s\n".formatted(i, extras.get(i)));
      }
      text.append("  rows of pieces\n    title | kind | width | rail\n");
      for (int i = 0; i < ROWS; i++) {
        text.append(
            "    \"p%d\" | \"k%d\" | %s | %s\n"
                .formatted(i, kinds.get(i), widths.get(i), overrides.get(i)));
      }
      return text.toString();
    }
  }

  /** Formulas drawn at random: each reads only what stands before it. */
  private static final class Drawn {
    final StringBuilder ofKinds = new StringBuilder();
    final StringBuilder ofPieces = new StringBuilder();
    final StringBuilder lines = new StringBuilder();
    private final List<String> columns = new ArrayList<>(List.of("width", "left side", "rail"));
    private final List<String> groups = new ArrayList<>(List.of("extra", "group"));
    private final List<String> values = new ArrayList<>(List.of("allowance", "twice", "total"));
    private final Random random;

    Drawn(Random random) {
      this.random = random;
      for (int i = 0; i < 12; i++) {
        draw(i);
      }
    }

    private String of(List<String> some) {
      return some.get(random.nextInt(some.size()));
    }

    private void draw(int number) {
      switch (random.nextInt(4)) {
        case 0 -> add(groups, "g" + number, ofGroup(), ofKinds);
        case 1 -> add(values, "v" + number, ofTotal(), lines);
        default -> add(columns, "c" + number, ofRow("c" + number), ofPieces);
      }
    }

    private static void add(List<String> to, String name, String formula, StringBuilder text) {
      to.add(name);
      text.append("      %s = %s\n".formatted(name, formula));
    }

    private String ofGroup() {
      String total = of(List.of("sum", "largest", "smallest"));
      return "%s of %s + %s over pieces where kind = this"
          .formatted(total, of(columns), of(values));
    }

    private String ofTotal() {
      String total = of(List.of("sum", "largest", "smallest"));
      return "%s of %s + %s over pieces where %s > %s"
          .formatted(total, of(columns), of(values), of(columns), of(values));
    }

    private String ofRow(String name) {
      return switch (random.nextInt(6)) {
        case 0 -> "kind.%s + %s".formatted(of(groups), of(columns));
        case 1 ->
            "if %s > %s then %s else %s"
                .formatted(of(columns), of(values), of(columns), of(values));
        case 2 -> "%s + %s rounded up to step".formatted(of(columns), of(values));
        case 3 ->
            "if first row then %s else above.%s + %s"
                .formatted(of(values), of(columns), of(columns));
        case 4 ->
            "if first row or width > 20 in then 0 in else above.%s + %s"
                .formatted(name, of(columns));
        default -> "%s - %s".formatted(of(columns), of(values));
      };
    }
  }

  private static String width(Random random) {
    return random.nextBoolean()
        ? (100 + random.nextInt(500)) + " mm"
        : (4 + random.nextInt(20)) + " " + (1 + random.nextInt(15)) + "/16 in";
  }

  @ParameterizedTest
  @ValueSource(longs = {411, 412, 413, 414})
  void edits_and_a_fill_from_scratch_agree(long seed) {
    Random random = new Random(seed);
    Job job = new Job(random);
    Filled filled = TextLoader.of(job.text()).open().fill();
    for (int i = 0; i < 12; i++) {
      filled = edited(edit(random, job, filled));
      assertSame(filled, TextLoader.of(job.text()).open().fill(), "seed " + seed + ", edit " + i);
    }
  }

  private static Edit edit(Random random, Job job, Filled filled) {
    int row = random.nextInt(ROWS);
    return switch (random.nextInt(6)) {
      case 0 -> {
        job.allowance = (1 + random.nextInt(9)) + "/32 in";
        yield filled.withFormula(line(filled, "allowance"), job.allowance);
      }
      case 1 -> {
        job.step = "1/" + (1 << random.nextInt(6)) + " in";
        yield filled.withFormula(line(filled, "step"), job.step);
      }
      case 2 -> {
        job.overrides.set(row, random.nextBoolean() ? "" : width(random));
        yield filled.withCell(column(filled, "rail"), row, job.overrides.get(row));
      }
      case 3 -> {
        job.kinds.set(row, random.nextInt(KINDS));
        yield filled.withCell(column(filled, "kind"), row, "\"k%d\"".formatted(job.kinds.get(row)));
      }
      case 4 -> {
        int kind = random.nextInt(KINDS);
        job.extras.set(kind, width(random));
        Column extra = requireNonNull(requireNonNull(filled.book().table("kinds")).column("extra"));
        yield filled.withCell(extra, kind, job.extras.get(kind));
      }
      default -> {
        job.widths.set(row, width(random));
        yield filled.withCell(column(filled, "width"), row, job.widths.get(row));
      }
    };
  }

  @Test
  void only_what_an_edit_feeds_is_run() {
    Filled filled = TextLoader.of(new Job(new Random(5)).text()).open().fill();
    Edit edit = filled.withFormula(line(filled, "twice"), "allowance + allowance");
    assertThat(names(edit)).containsExactly("twice");
    edit = filled.withFormula(line(filled, "twice"), "3 * allowance");
    assertThat(names(edit)).startsWith("twice", "right side", "rail").doesNotContain("left side");
    assertThat(names(edit)).doesNotContain("widest");
  }

  @Test
  void a_wave_stops_where_a_value_comes_out_unchanged() {
    Filled filled = TextLoader.of(new Job(new Random(6)).text()).open().fill();
    Edit edit =
        filled.withCell(column(filled, "rail"), 7, filled.find("rail of p7").exact() + " in");
    assertThat(names(edit)).containsExactly("rail");
  }

  @Test
  void an_edit_at_fault_changes_nothing_and_says_why() {
    Filled filled = TextLoader.of(new Job(new Random(7)).text()).open().fill();
    Edit edit = filled.withFormula(line(filled, "twice"), "2 lb");
    assertThat(edit.filled()).isNull();
    List<String> codes = edit.diagnostics().stream().map(Diagnostic::code).toList();
    assertThat(codes.get(0)).isEqualTo("edit-refused");
    assertThat(codes.subList(1, codes.size())).containsOnly("dimension-mismatch");
    assertThat(edit.diagnostics().get(0).message())
        .startsWith("setting 'twice' to '2 lb' leaves an error at job.batten:");
    edit = filled.withFormula(line(filled, "allowance"), "twice");
    assertThat(edit.diagnostics()).extracting(Diagnostic::code).containsExactly("formula-circle");
  }

  private static List<String> names(Edit edit) {
    return edit.ran().stream().map(place -> place.label()).toList();
  }

  private static Filled edited(Edit edit) {
    assertThat(edit.diagnostics()).isEmpty();
    assertThat(edit.filled()).isNotNull();
    return Objects.requireNonNull(edit.filled());
  }

  private static Line line(Filled filled, String name) {
    return (Line) filled.spot(name).place();
  }

  private static Column column(Filled filled, String name) {
    Table table = Objects.requireNonNull(filled.book().table("pieces"));
    @Nullable Column column = table.column(name);
    return Objects.requireNonNull(column);
  }

  private static void assertSame(Filled edited, Filled fresh, String where) {
    assertThat(edited.checked().places()).as(where).hasSameSizeAs(fresh.checked().places());
    for (CheckedPlace checked : fresh.checked().places()) {
      Place place = checked.place();
      int rows = place.table() == null ? 1 : fresh.rows(place.table()).count();
      Place same = samePlace(edited, place);
      for (int row = 0; row < rows; row++) {
        assertThat(edited.results().value(new Spot(same, row)))
            .as("%s: %s row %d", where, place, row)
            .isEqualTo(fresh.results().value(new Spot(place, row)));
      }
    }
  }

  private static Place samePlace(Filled filled, Place place) {
    return filled.checked().places().stream()
        .map(CheckedPlace::place)
        .filter(other -> other.words().equals(place.words()))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no place " + place.words() + " after the edit"));
  }
}
