package org.battenbook.listing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvWriterTest {

  /** The examples and the list of signs are those of OWASP's page "CSV Injection". */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      delimiter = '|',
      textBlock =
          """
          =1+2";=1+2    | "'=1+2"";=1+2"
          =1+2'" ;,=1+2 | "'=1+2'"" ;,=1+2"
          +1            | "'+1"
          -1            | "'-1"
          @sum          | "'@sum"
          ~\t=1~        | ~"'\t=1"~
          ＝1           | "'＝1"
          ash cap       | "ash cap"
          3-1           | "3-1"
          """)
  void a_text_that_begins_like_a_formula_is_kept_from_being_one(String text, String written)
      throws IOException {
    assertThat(written(text)).isEqualTo(written + "\r\n");
  }

  @Test
  void a_text_that_begins_with_a_line_break_is_kept_from_being_a_formula() throws IOException {
    assertThat(written("\r=1")).isEqualTo("\"'\r=1\"\r\n");
    assertThat(written("\n=1")).isEqualTo("\"'\n=1\"\r\n");
  }

  @Test
  void a_negative_number_stays_a_number() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CsvWriter csv = new CsvWriter(out);
    csv.plain("-0.25").text("oak").plain("").endRow();
    csv.finish();
    assertThat(out.toString(StandardCharsets.UTF_8)).isEqualTo("\"-0.25\",\"oak\",\r\n");
  }

  /** RFC 4180, section 2, rules 5 to 7: quotes around, a quote within doubled, breaks kept. */
  @Test
  void quotes_are_doubled_and_breaks_stay_within_quotes() throws IOException {
    assertThat(written("b \"b\" \r\nb, b")).isEqualTo("\"b \"\"b\"\" \r\nb, b\"\r\n");
  }

  private static String written(String text) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CsvWriter csv = new CsvWriter(out);
    csv.text(text).endRow();
    csv.finish();
    return out.toString(StandardCharsets.UTF_8);
  }
}
