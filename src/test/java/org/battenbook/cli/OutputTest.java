package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.battenbook.source.Ink;
import org.battenbook.source.InkedText;
import org.junit.jupiter.api.Test;

class OutputTest {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  private Output output(boolean colored) {
    return new Output(bytes, StandardCharsets.UTF_8, colored, true);
  }

  private String printed() {
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @Test
  void inks_show_on_a_colored_output_only() {
    InkedText line = InkedText.of(Ink.FAULT, "wide").and(" of ").and(Ink.ASIDE, "");
    output(true).line(line);
    output(false).line(line);
    assertThat(printed()).isEqualTo("\u001b[1;31mwide\u001b[0m of \nwide of \n");
  }

  @Test
  void what_a_terminal_acts_on_only_shows() {
    output(true).line(Ink.HEADING, "a\u001b[31mb\nc\td\u007fe\u009bf\u202eg\u200eh\u061ci\u2028j");
    assertThat(printed())
        .isEqualTo("\u001b[1ma␛[31mb␊c d\uFFFDe\uFFFDf\uFFFDg\uFFFDh\uFFFDi\uFFFDj\u001b[0m\n");
  }

  @Test
  void words_over_a_line_stay_in_it() {
    output(false).overLine("plan\r\n\u001b[2J");
    assertThat(printed()).isEqualTo("\rplan␍␊␛[2J");
  }

  @Test
  void after_a_failure_nothing_more_is_written() {
    Output output = new Output(full(), StandardCharsets.UTF_8, false, true);
    assertThatThrownBy(() -> output.line("one"))
        .isInstanceOf(NotPrinted.class)
        .hasMessage("No space left on device");
    output.line("two");
    output.json(out -> out.write('3'));
    output.flush();
  }

  private static OutputStream full() {
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException("No space left on device");
      }
    };
  }
}
