package org.battenbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.battenbook.planstore.PlanStore;

/** One run of the command, and all that it printed. */
public record CommandRun(int status, String out, String err) {

  /** Runs it in this process, by the same way in that the command has. */
  static CommandRun of(String... arguments) {
    return of(PlanStore.NONE, arguments);
  }

  /** With plans that are kept from run to run. */
  static CommandRun of(PlanStore plans, String... arguments) {
    return of(Person.AWAY, plans, arguments);
  }

  /** On a terminal. */
  static CommandRun coloured(String... arguments) {
    return of(Person.PATIENT, PlanStore.NONE, arguments);
  }

  /** On a terminal without colors, with the best plans found within a tenth of a second each. */
  public static CommandRun impatient(PlanStore plans, String... arguments) {
    return of(Person.IMPATIENT, plans, arguments);
  }

  /** Who sits at the terminal. */
  private enum Person {
    AWAY,
    PATIENT,
    IMPATIENT;

    boolean isThere() {
      return this != AWAY;
    }

    boolean seesColors() {
      return this == PATIENT;
    }

    InputStream keys() {
      return this == IMPATIENT ? new EnterAlways() : InputStream.nullInputStream();
    }
  }

  /** Enter is pressed again and again. */
  private static final class EnterAlways extends InputStream {
    @Override
    public int read() {
      return '\n';
    }

    @Override
    public int available() {
      return 1;
    }
  }

  private static CommandRun of(Person person, PlanStore plans, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Terminal terminal = new Terminal(out, err, UTF_8, person.isThere(), person.seesColors());
    Surroundings surroundings = new Surroundings(terminal, plans, person.keys());
    int status = Battenbook.run(surroundings, arguments);
    return new CommandRun(status, out.toString(UTF_8), err.toString(UTF_8));
  }

  /** Runs it in a process of its own with so much memory, and with no plans kept before. */
  static CommandRun withMemory(String memory, String... arguments)
      throws IOException, InterruptedException {
    Path cache = Files.createTempDirectory("cache");
    try {
      return inProcess(command(memory, arguments), cache);
    } finally {
      delete(cache);
    }
  }

  /** The command line of a process with so much memory. */
  static List<String> command(String memory, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Xmx" + memory);
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(Battenbook.class.getName());
    command.addAll(List.of(arguments));
    return command;
  }

  private static CommandRun inProcess(List<String> command, Path cache)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("XDG_CACHE_HOME", cache.toString());
    Process process = builder.start();
    String told = new String(process.getInputStream().readAllBytes(), UTF_8);
    return new CommandRun(process.waitFor(), "", told);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
