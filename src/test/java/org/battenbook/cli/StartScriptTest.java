package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start scripts, beside a jar of one class that tells what it was started with. */
class StartScriptTest {
  private static final Path SCRIPTS = Path.of("src/main/scripts");
  private static final String JAVA_HOME = System.getProperty("java.home");
  private static final int STATUS = 41;

  @TempDir Path root;
  private Path folder = Path.of("");
  private Path script = Path.of("");

  /** What the script starts here instead of the program. */
  static final class Echo {
    private Echo() {}

    public static void main(String[] arguments) {
      for (String argument : arguments) {
        System.out.println("[" + argument + "]");
      }
      System.exit(STATUS);
    }
  }

  private record Run(int status, String out, String err) {}

  @BeforeEach
  void putScriptBesideJar() throws IOException {
    folder = Files.createDirectory(root.resolve("place"));
    script = folder.resolve("battenbook");
    Files.copy(SCRIPTS.resolve("battenbook"), script);
    Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
    writeJar(folder.resolve("battenbook.jar"));
  }

  private static void writeJar(Path jar) throws IOException {
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Echo.class.getName());
    String entry = Echo.class.getName().replace('.', '/') + ".class";
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file, manifest);
        InputStream in = Objects.requireNonNull(Echo.class.getResourceAsStream("/" + entry))) {
      out.putNextEntry(new ZipEntry(entry));
      in.transferTo(out);
    }
    Files.setLastModifiedTime(jar, FileTime.from(Instant.now().minusSeconds(60)));
  }

  private Run run(Path command, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    return ended(start(command, environment, arguments));
  }

  private Run run(String... arguments) throws IOException, InterruptedException {
    return run(script, Map.of("JAVA_HOME", JAVA_HOME), arguments);
  }

  private Process start(Path command, Map<String, String> environment, String... arguments)
      throws IOException {
    List<String> words = new ArrayList<>(List.of(command.toString()));
    words.addAll(List.of(arguments));
    ProcessBuilder process = new ProcessBuilder(words).directory(root.toFile());
    process.environment().remove("JAVA_HOME");
    process.environment().remove("JAVA_TOOL_OPTIONS");
    process.environment().putAll(environment);
    return process.start();
  }

  private static Run ended(Process process) throws IOException, InterruptedException {
    String out = text(process.getInputStream());
    String err = text(process.getErrorStream());
    return new Run(process.waitFor(), out, err);
  }

  private static String text(InputStream stream) throws IOException {
    return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
  }

  private List<Path> archives() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().contains(".jsa")).toList();
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void arguments_and_status_go_through_as_they_are() throws Exception {
    String[] arguments = {"fill", "a  b", "", "*", "$HOME", "'\"\\", "-Xmx1g", "line\nbreak"};
    Run first = run(arguments);
    assertThat(first).isEqualTo(run(arguments));
    assertThat(first.status()).isEqualTo(STATUS);
    assertThat(first.out()).isEqualTo("[" + String.join("]\n[", arguments) + "]\n");
    assertThat(first.err()).isEmpty();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void the_first_job_leaves_an_archive_and_the_next_run_uses_it() throws Exception {
    run("fill", "job.batten");
    assertThat(archives()).hasSize(1);
    Path log = root.resolve("classes.log");
    Map<String, String> logging =
        Map.of(
            "JAVA_HOME",
            JAVA_HOME,
            "BATTENBOOK_JAVA_OPTIONS",
            "-Dx=y -Xlog:class+load:file=" + log);
    run(script, logging, "fill", "job.batten");
    assertThat(Files.readString(log))
        .containsPattern(Echo.class.getSimpleName() + " source: shared objects file \\(top\\)");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void help_leaves_no_archive() throws Exception {
    assertThat(run("--help").status()).isEqualTo(STATUS);
    assertThat(run("fill").status()).isEqualTo(STATUS);
    assertThat(run().status()).isEqualTo(STATUS);
    assertThat(archives()).isEmpty();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void an_archive_older_than_the_jar_is_made_again() throws Exception {
    run("fill", "job.batten");
    Path archive = archives().get(0);
    Files.setLastModifiedTime(archive, FileTime.from(Instant.now().minusSeconds(3600)));
    Run again = run("fill", "job.batten");
    assertThat(again.err()).isEmpty();
    assertThat(archives()).containsExactly(archive);
    assertThat(Files.getLastModifiedTime(archive).toInstant())
        .isAfter(Instant.now().minusSeconds(1800));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void an_archive_that_is_none_is_ignored() throws Exception {
    run("fill", "job.batten");
    Path archive = archives().get(0);
    Files.delete(archive);
    Files.writeString(archive, "not an archive");
    assertThat(run("fill", "job.batten")).isEqualTo(new Run(STATUS, "[fill]\n[job.batten]\n", ""));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void two_first_runs_at_once_leave_one_whole_archive() throws Exception {
    Map<String, String> java = Map.of("JAVA_HOME", JAVA_HOME);
    Process one = start(script, java, "fill", "job.batten");
    Process other = start(script, java, "fill", "job.batten");
    assertThat(ended(one)).isEqualTo(ended(other));
    assertThat(archives()).hasSize(1);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void a_link_to_a_link_finds_the_jar() throws Exception {
    Path bin = Files.createDirectory(root.resolve("bin"));
    Files.createSymbolicLink(root.resolve("far"), script);
    Path near = Files.createSymbolicLink(bin.resolve("near"), Path.of("../far"));
    Run run = run(near, Map.of("JAVA_HOME", JAVA_HOME), "why", "job.batten", "kerf");
    assertThat(run.out()).isEqualTo("[why]\n[job.batten]\n[kerf]\n");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void without_the_jar_it_says_so() throws Exception {
    Files.delete(folder.resolve("battenbook.jar"));
    Run run = run("fill", "job.batten");
    assertThat(run.status()).isEqualTo(ExitStatus.COMMAND_LINE_WRONG.code());
    assertThat(run.err())
        .contains("battenbook.jar' is missing; keep this script and the jar in one folder");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void without_java_it_says_what_to_install() throws Exception {
    Path tools = Files.createDirectory(root.resolve("tools"));
    for (String tool : List.of("dirname", "readlink", "sed")) {
      Files.copy(onPath(tool), tools.resolve(tool), StandardCopyOption.COPY_ATTRIBUTES);
    }
    Run run = run(script, Map.of("PATH", tools.toString()), "fill", "job.batten");
    assertThat(run.status()).isEqualTo(ExitStatus.COMMAND_LINE_WRONG.code());
    assertThat(run.err()).isEqualTo("battenbook: Java is missing; install Java 17 or later\n");
    Run home = run(script, Map.of("JAVA_HOME", tools.toString()), "fill", "job.batten");
    assertThat(home.err()).contains("JAVA_HOME is '" + tools + "', and there is no Java");
  }

  private static Path onPath(String tool) {
    return Stream.of("/usr/bin", "/bin")
        .map(place -> Path.of(place, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void an_older_java_is_refused_by_its_release_file_or_by_its_own_word() throws Exception {
    Path home = root.resolve("java-11");
    Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho 'openjdk version \"1.8.0_402\"' >&2\n");
    Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    Run asked = run(script, Map.of("JAVA_HOME", home.toString()), "fill", "job.batten");
    assertThat(asked.status()).isEqualTo(ExitStatus.COMMAND_LINE_WRONG.code());
    assertThat(asked.err()).contains("this is Java 1.8.0_402; install Java 17 or later");
    Files.writeString(home.resolve("release"), "IMPLEMENTOR=\"X\"\nJAVA_VERSION=\"11.0.22\"\n");
    Run read = run(script, Map.of("JAVA_HOME", home.toString()), "fill", "job.batten");
    assertThat(read.err()).contains("this is Java 11.0.22; install Java 17 or later");
  }

  @Test
  void the_script_for_windows_gives_java_the_same_options() throws IOException {
    String windows = Files.readString(SCRIPTS.resolve("battenbook.cmd"));
    assertThat(windows.replace("\r\n", "")).doesNotContain("\n");
    options(Files.readString(SCRIPTS.resolve("battenbook")))
        .forEach(option -> assertThat(windows).contains(option));
  }

  private static Stream<String> options(String text) {
    return text.lines()
        .filter(line -> !line.startsWith("#"))
        .flatMap(line -> Stream.of(line.trim().split(" ")))
        .filter(word -> word.startsWith("-X"))
        .map(word -> word.replaceFirst("=\"\\$.*", ""));
  }
}
