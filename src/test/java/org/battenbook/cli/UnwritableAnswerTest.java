package org.battenbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.channels.Channels;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.planstore.PlanStore;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What commands do when their answer cannot be written: a full disk, a closed pipe. */
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
          Run run = Run.answering(fullDisk(), arguments);
          assertThat(run.err())
              .isEqualTo("battenbook: the answer cannot be written: No space left on device\n");
          assertThat(run.status()).isEqualTo(2);
        });
  }

  @TestFactory
  Stream<DynamicTest> a_closed_pipe_ends_quietly() {
    return each(
        arguments -> {
          Run run = Run.answering(closedPipe(), arguments);
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
                      assertThat(Run.telling(fullDisk(), arguments)).isEqualTo(2);
                      assertThat(Run.telling(closedPipe(), arguments)).isEqualTo(141);
                    }));
  }

  /**
   * The system gives its reasons in its own language. Where a language is not installed, it gives
   * them in English.
   */
  @ParameterizedTest
  @ValueSource(strings = {"C", "de_DE.UTF-8"})
  void a_process_tells_a_closed_pipe_from_a_full_disk_in_any_language(String language)
      throws IOException, InterruptedException {
    assertThat(Run.inProcess(language, Redirect.PIPE)).isEqualTo(new Run(141, ""));
    File full = new File("/dev/full");
    assumeThat(full).exists();
    Run run = Run.inProcess(language, Redirect.to(full));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).startsWith("battenbook: the answer cannot be written: ").hasLineCount(1);
  }

  /** What one command line is tested for. */
  private interface Check {
    void of(List<String> arguments) throws IOException;
  }

  private static Stream<DynamicTest> each(Check check) {
    return ANSWERS.stream()
        .map(arguments -> dynamicTest(String.join(" ", arguments), () -> check.of(arguments)));
  }

  private static OutputStream fullDisk() {
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException("No space left on device");
      }
    };
  }

  private static OutputStream closedPipe() throws IOException {
    return Channels.newOutputStream(ClosedPipe.closedByReader());
  }

  private record Run(int status, String err) {
    /** Runs a command that answers to a stream. */
    static Run answering(OutputStream out, List<String> arguments) {
      ByteArrayOutputStream told = new ByteArrayOutputStream();
      int status = status(out, told, arguments);
      return new Run(status, told.toString(UTF_8));
    }

    /** The status of a command that tells its messages to a stream. */
    static int telling(OutputStream err, List<String> arguments) {
      return status(new ByteArrayOutputStream(), err, arguments);
    }

    private static int status(OutputStream out, OutputStream err, List<String> arguments) {
      Terminal terminal = new Terminal(out, err, UTF_8, false, false);
      Surroundings surroundings =
          new Surroundings(terminal, PlanStore.NONE, InputStream.nullInputStream());
      return Battenbook.run(surroundings, arguments.toArray(String[]::new));
    }

    /** Runs a command in a process of its own; nobody reads its answer. */
    static Run inProcess(String language, Redirect answer)
        throws IOException, InterruptedException {
      ProcessBuilder builder =
          new ProcessBuilder(CommandRun.command("256m", "fill", JOB)).redirectOutput(answer);
      builder.environment().put("LC_ALL", language);
      Process process = builder.start();
      process.getInputStream().close();
      String told = new String(process.getErrorStream().readAllBytes(), UTF_8);
      return new Run(process.waitFor(), told);
    }
  }
}
