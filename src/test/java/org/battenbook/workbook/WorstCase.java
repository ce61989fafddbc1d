package org.battenbook.workbook;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.battenbook.number.Rational;
import org.battenbook.unit.Unit;
import org.battenbook.unit.Units;
import org.battenbook.value.Value;

/**
 * By how much the line or column {@code value} of a workbook is off at worst, in two ways that
 * follow errors by formulas of their own: as {@code why --tolerance} tells it, and as comparisons
 * hold or fail at the very edge.
 *
 * @param texts the texts of the workbook by the names of their files
 */
record WorstCase(Map<String, String> texts) {
  private static final Unit MM = Units.find("mm").orElseThrow();

  static WorstCase of(String job) {
    return new WorstCase(Map.of("job.batten", job));
  }

  /** The worst case of a job that follows {@code standards.batten}. */
  static WorstCase of(String job, String standards) {
    return new WorstCase(Map.of("job.batten", job, "standards.batten", standards));
  }

  /** Asserts by how many millimeters a place is off. */
  void assertOff(String place, String worst, String why) {
    Filled filled = filled(texts);
    Rational off = Rational.parse(worst);
    assertThat(off(filled, place)).as(why).isEqualTo(off);
    Rational value = value(filled, place);
    Filled compared = filled(withComparisons(value.minus(off), value.plus(off)));
    assertThat(
            Map.of(
                "no more", shown(compared, "no more", place),
                "less", shown(compared, "less", place),
                "no less", shown(compared, "no less", place),
                "greater", shown(compared, "greater", place)))
        .as(why)
        .isEqualTo(Map.of("no more", "yes", "less", "no", "no less", "yes", "greater", "no"));
  }

  /** Comparisons with both ends stand below the value. */
  private Map<String, String> withComparisons(Rational low, Rational high) {
    String comparisons =
        List.of(
                "no more = value <= %s mm".formatted(high),
                "less = value < %s mm".formatted(high),
                "no less = value >= %s mm".formatted(low),
                "greater = value > %s mm".formatted(low))
            .stream()
            .map(comparison -> "\n$1" + comparison + " even at worst")
            .collect(Collectors.joining());
    Map<String, String> compared = new HashMap<>(texts);
    compared.replaceAll(
        (file, text) -> text.replaceFirst("(?m)^( *)value = .*", "$0" + comparisons));
    return compared;
  }

  static Filled filled(Map<String, String> texts) {
    TextLoader loader = new TextLoader();
    texts.forEach(loader::with);
    Workbook job = loader.open();
    assertThat(job.hasFaults()).as(job.diagnostics().toString()).isFalse();
    return job.fill();
  }

  private static Rational off(Filled filled, String place) {
    return (Rational) requireNonNull(filled.errors(place).worst()).in(MM);
  }

  private static Rational value(Filled filled, String place) {
    return (Rational) ((Value.Amount) filled.find(place).value()).quantity().in(MM);
  }

  private static String shown(Filled filled, String comparison, String place) {
    return filled.find(place.replace("value", comparison)).shown().text();
  }
}
