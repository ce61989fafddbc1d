package org.battenbook.export.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.battenbook.number.Rational;
import org.battenbook.unit.Dimension;
import org.battenbook.unit.Form;
import org.battenbook.unit.Forms;
import org.battenbook.unit.Units;
import org.junit.jupiter.api.Test;

class NumberFormatsTest {
  private static final Form SIXTEENTHS = Form.of(Rational.of(1, 16), false, Units.INCH);

  @Test
  void a_number_on_the_step_is_shown_as_a_fraction_in_lowest_terms() {
    assertThat(shown(SIXTEENTHS, "19 3/8")).isEqualTo("19 3/8");
    assertThat(shown(SIXTEENTHS, "-3/16")).isEqualTo("-3/16");
    assertThat(shown(SIXTEENTHS, "12")).isEqualTo("12");
    for (int k = 0; k < 64; k++) {
      Form sixtyFourths = Form.of(Rational.of(1, 64), false, Units.INCH);
      Rational number = Rational.of(k, 64).plus(Rational.of(7));
      String fraction = k == 0 ? "7" : "7 " + Rational.of(k, 64);
      assertThat(shown(sixtyFourths, number)).isEqualTo(fraction);
    }
  }

  @Test
  void a_number_off_the_step_is_shown_in_decimals_so_that_no_format_rounds_it_to_a_step() {
    assertThat(shown(SIXTEENTHS, "17087/1016")).isEqualTo("16.8179");
    assertThat(shown(SIXTEENTHS, "1 3/32")).isEqualTo("1.0938");
    assertThat(NumberFormats.of(Form.of(null, false, Units.MILLIMETRE), Rational.parse("427.175")))
        .isEqualTo("General");
  }

  @Test
  void money_has_the_places_of_its_currency() {
    Forms forms = Forms.of(SIXTEENTHS);
    assertThat(shown(forms.form(Dimension.money("USD")), "1234.5")).isEqualTo("1,234.50");
    assertThat(shown(forms.form(Dimension.money("JPY")), "1234")).isEqualTo("1,234");
  }

  @Test
  void counts_are_shown_as_they_are() {
    Forms forms = Forms.of(SIXTEENTHS);
    assertThat(shown(forms.form(Dimension.NONE), "12")).isEqualTo("12");
    assertThat(shown(forms.form(Dimension.NONE), "1/3")).isEqualTo("0.3333");
  }

  private static String shown(Form form, String number) {
    return shown(form, Rational.parse(number));
  }

  /** As the library's own formatter shows the cell. */
  private static String shown(Form form, Rational number) {
    return new DataFormatter(Locale.ROOT)
        .formatRawCellContents(number.toDouble(), -1, NumberFormats.of(form, number))
        .strip()
        .replaceAll(" +", " ");
  }
}
