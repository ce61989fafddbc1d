package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An allowance that makes no sense breaks a requirement of its own. */
class AllowanceStandardsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      value = {
        "mat overlap ~ -1/4 in ~ Mat overlap must be at least 0 in; it is -1/4 in.",
        "minimum overlap ~ -1/4 in ~ Minimum overlap must be at least 0 in; it is -1/4 in.",
        "mat reveal ~ -1/4 in ~ Mat reveal must be at least 0 in; it is -1/4 in.",
        "image reveal ~ -1/4 in ~ Image reveal must be at least 0 in; it is -1/4 in.",
        "float reveal ~ -1/4 in ~ Float reveal must be at least 0 in; it is -1/4 in.",
        "float gap ~ -1/4 in ~ Float gap must be at least 0 in; it is -1/4 in.",
        "standard border ~ -1 in ~ Standard border must be at least 0 in; it is -1 in.",
        "bottom weighting ~ -1/2 in ~ Bottom weighting must be at least 0 in; it is -1/2 in.",
        "gap between windows ~ -1 in ~ Gap between windows must be at least 0 in; it is -1 in.",
        "fitting allowance ~ -1/8 in ~ Fitting allowance must be at least 0 in; it is -1/8 in.",
        "saw kerf ~ -1/8 in ~ Saw kerf must be at least 0 in; it is -1/8 in.",
        "end trims ~ -1 in ~ End trims must be at least 0 in; they are -1 in.",
        "spacer thickness ~ -1/8 in ~ Spacer thickness must be at least 0 in; it is -1/8 in.",
        "dust cover inset ~ -1/8 in ~ Dust cover inset must be at least 0 in; it is -1/8 in.",
        "cleat inset ~ -1/4 in ~ Cleat inset must be at least 0 in; it is -1/4 in.",
        "cleat end inset ~ -1 in ~ Cleat end inset must be at least 0 in; it is -1 in.",
        "cleat trim ~ -1 in ~ Cleat trim must be at least 0 in; it is -1 in.",
        "slide clearance ~ -1 in ~ Slide clearance must be at least 0 in; it is -1 in.",
        "wall surface thickness ~ -1 in ~ Wall surface thickness must be at least 0 in; it is -1"
            + " in.",
        "mat step ~ 0 in ~ Mat step must be more than 0 in; it is 0 in.",
        "rail step ~ 0 in ~ Rail step must be more than 0 in; it is 0 in.",
        "kerf step ~ 0 in ~ Kerf step must be more than 0 in; it is 0 in.",
        "glass step ~ 0 in ~ Glass step must be more than 0 in; it is 0 in.",
        "dust cover step ~ 0 in ~ Dust cover step must be more than 0 in; it is 0 in.",
        "cleat step ~ -1 in ~ Cleat step must be more than 0 in; it is -1 in.",
        "fastener spacing ~ 0 in ~ Fastener spacing must be more than 0 in; it is 0 in.",
        "minimum fasteners ~ 0 ~ Minimum fasteners must be at least 1; it is 0.",
        "maximum miter ~ 90 deg ~ Maximum miter must be more than 0 deg and less than 90 deg; it"
            + " is 90 deg.",
        "warming ~ -40 degF ~ Warming cannot be negative; it is -40 degF.",
        "optical center rise ~ 1 ~ Optical center rise must be at least 0 and less than 1; it is 1."
      })
  void an_allowance_that_makes_no_sense_breaks_its_requirement(
      String name, String value, String message) {
    assertThat(new StandardJob().change(name, value).broken())
        .anyMatch(text -> text.startsWith(message));
  }
}
