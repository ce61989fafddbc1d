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
        "mat overlap ~ -1/4 in ~ A mat overlap of -1/4 in covers nothing",
        "least overlap ~ -1/4 in ~ A least overlap of -1/4 in holds nothing",
        "mat reveal ~ -1/4 in ~ A mat reveal of -1/4 in hides the mat below",
        "image reveal ~ -1/4 in ~ An image reveal of -1/4 in covers the image",
        "float reveal ~ -1/4 in ~ A float reveal of -1/4 in covers the sheet",
        "float gap ~ -1/4 in ~ A float gap of -1/4 in does not let the panel in",
        "standard border ~ -1 in ~ A standard border of -1 in is no border",
        "mat weight ~ -1/2 in ~ A mat weight of -1/2 in makes the bottom border the narrower",
        "gap between windows ~ -1 in ~ Windows -1 in apart lie upon each other",
        "fitting allowance ~ -1/8 in ~ A fitting allowance of -1/8 in makes the opening smaller",
        "saw kerf ~ -1/8 in ~ A saw kerf of -1/8 in gives wood back",
        "end trims ~ -1 in ~ End trims of -1 in make sticks longer",
        "spacer thickness ~ -1/8 in ~ A spacer -1/8 in thick keeps nothing apart",
        "dust cover inset ~ -1/8 in ~ A dust cover inset of -1/8 in lets the paper stand out",
        "cleat inset ~ -1/4 in ~ A cleat inset of -1/4 in lets the cleat stand out above",
        "cleat end inset ~ -1 in ~ A cleat end inset of -1 in lets the cleat stand out beside",
        "cleat trim ~ -1 in ~ A cleat trim of -1 in makes sheets wider",
        "slide room ~ -1 in ~ A slide room of -1 in makes the wall's half longer",
        "wallboard ~ -1 in ~ A wallboard -1 in thick is none",
        "mat step ~ 0 in ~ A mat step of 0 in is no scale to cut mats by",
        "rail step ~ 0 in ~ A rail step of 0 in is no scale to cut rails by",
        "kerf step ~ 0 in ~ A kerf step of 0 in is no scale to cut kerfs by",
        "glass step ~ 0 in ~ A glass step of 0 in is no scale to cut lites by",
        "dust cover step ~ 0 in ~ A dust cover step of 0 in is no scale to cut dust covers by",
        "cleat step ~ -1 in ~ A cleat step of -1 in is no scale to cut cleats by",
        "fixing spacing ~ 0 in ~ Fixings 0 in apart are without number",
        "least fixings ~ 0 ~ With 0 fixings a cleat hangs from nothing",
        "largest miter ~ 90 deg ~ No saw swings to 90 deg",
        "warming ~ -40 degF ~ Only warming closes the room around a lite",
        "optical share ~ 1 ~ An optical share of 1 sets no window"
      })
  void an_allowance_that_makes_no_sense_breaks_its_requirement(
      String name, String value, String message) {
    assertThat(new StandardJob().change(name, value).broken())
        .anyMatch(text -> text.startsWith(message));
  }
}
