package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.planstore.PlanStore;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What the commands do where nobody can take their answer: a full disk, a closed pipe. */
class UnwritableAnswerTest {
  private static final String JOB = "workbooks/first-frame.batten";
  private static final String PLACE = "top rail of Heron, in ink";

  private static final List<List<String>> ANSWERS =
      List.of(
          List.of("--help"),
          List.of("--version"),
          List.of("fill", "--help"),
          List.of("completion"),
          List.of("fill", JOB),
          List.of("fill", JOB, "--json"),
          List.of("fill", JOB, "--page", "allowances"),
          List.of("why", JOB, PLACE),
          List.of("why", JOB, PLACE, "--json"),
          List.of("why", JOB, PLACE, "--tolerance"),
          List.of("why", JOB, PLACE, "--tolerance", "--json"),
          List.of("feeds", JOB, "saw kerf"),
          List.of("feeds", JOB, "saw kerf", "--json"),
          List.of("cuts", JOB),
          List.of("cuts", JOB, "--json"));

  @TestFactory
  Stream<DynamicTest> a_full_disk_is_told_with_status_2() {
    return each(
        arguments -> {
          Run run = Run.of("No space left on device", "", arguments);
          assertThat(run.err())
              .isEqualTo("battenbook: the answer cannot be written: No space left on device\n");
          assertThat(run.status()).isEqualTo(2);
        });
  }

  @TestFactory
  Stream<DynamicTest> a_closed_pipe_ends_quietly() {
    return each(
        arguments -> {
          Run run = Run.of("Broken pipe", "", arguments);
          assertThat(run.err()).isEmpty();
          assertThat(run.status()).isEqualTo(141);
        });
  }

  @TestFactory
  Stream<DynamicTest> messages_that_cannot_be_written_count_too() {
    return Stream.of(List.of("fill"), List.of("fill", "none.batten"), List.of("fil"))
        .map(
            arguments ->
                dynamicTest(
                    String.join(" ", arguments),
                    () -> {
                      assertThat(Run.of("", "No space left", arguments).status()).isEqualTo(2);
                      assertThat(Run.of("", "Broken pipe", arguments).status()).isEqualTo(141);
                    }));
  }

  /** What one command line is tested for. */
  private interface Check {
    void of(List<String> arguments);
  }

  private static Stream<DynamicTest> each(Check check) {
    return ANSWERS.stream()
        .map(arguments -> dynamicTest(String.join(" ", arguments), () -> check.of(arguments)));
  }

  private record Run(int status, String err) {
    /** Runs a command with streams that fail with these reasons; an empty reason is none. */
    static Run of(String outFails, String errFails, List<String> arguments) {
      ByteArrayOutputStream told = new ByteArrayOutputStream();
      Terminal terminal =
          new Terminal(
              failing(outFails, new ByteArrayOutputStream()),
              failing(errFails, told),
              StandardCharsets.UTF_8,
              false,
              false);
      Surroundings surroundings = new Surroundings(terminal, PlanStore.NONE);
      int status = Battenbook.run(surroundings, arguments.toArray(String[]::new));
      return new Run(status, told.toString(StandardCharsets.UTF_8));
    }

    private static OutputStream failing(String reason, OutputStream otherwise) {
      return reason.isEmpty()
          ? otherwise
          : new OutputStream() {
            @Override
            public void write(int b) throws IOException {
              throw new IOException(reason);
            }
          };
    }
  }
}
