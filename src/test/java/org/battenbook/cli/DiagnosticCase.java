package org.battenbook.cli;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.battenbook.bind.Spot;
import org.battenbook.book.Column;
import org.battenbook.book.Loader;
import org.battenbook.edit.CellEdit;
import org.battenbook.edit.ChangeEdit;
import org.battenbook.edit.ChangeRemoval;
import org.battenbook.edit.FormulaEdit;
import org.battenbook.edit.LineAddition;
import org.battenbook.edit.RowAddition;
import org.battenbook.edit.RowRemoval;
import org.battenbook.edit.WorkbookEdit;
import org.battenbook.source.Diagnostic;
import org.battenbook.source.DiagnosticPrinter;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.Workbook;

/**
 * One case of {@code spec/diagnostics.txt}: a job, the files around it, and what is told of it.
 *
 * @param code the diagnostic that the case is there for
 * @param setting the lines that make the case: the job, then files and edits behind lines that
 *     begin with {@code ---}
 * @param told each message, its code in brackets before it
 */
record DiagnosticCase(String code, List<String> setting, String told) {
  private static final String HEAD = "=== ";
  private static final String PART = "--- ";

  /** Some cases repeat a slip very often: of one code no more messages are written down. */
  private static final int MOST_OF_A_CODE = 8;

  private static final String TOLD = "--- told";

  /** All cases of a text. */
  static List<DiagnosticCase> all(String text) {
    return Stream.of(text.split("(?m)^" + HEAD)).skip(1).map(DiagnosticCase::read).toList();
  }

  private static DiagnosticCase read(String block) {
    String[] halves = block.split("(?m)^" + TOLD + "\n", 2);
    List<String> lines = halves[0].lines().toList();
    String told = halves.length == 1 ? "" : halves[1].strip() + "\n";
    return new DiagnosticCase(lines.get(0), lines.subList(1, lines.size()), told);
  }

  /** The same case with something else told, as it stands in the text. */
  String with(String nowTold) {
    String lines = String.join("\n", setting).stripTrailing();
    return HEAD + code + "\n" + lines + "\n" + TOLD + "\n" + nowTold + "\n";
  }

  /** The codes of what is told. */
  List<String> codes() {
    return told.lines()
        .filter(line -> line.startsWith("[") && line.endsWith("]"))
        .map(line -> line.substring(1, line.length() - 1))
        .toList();
  }

  /** What the program tells of it. */
  String run(Path folder) throws IOException {
    Path job = folder.resolve("job.batten");
    List<String> edits = lay(folder, job);
    try {
      Workbook workbook = Workbook.open(job.toString());
      List<Diagnostic> found = new ArrayList<>(workbook.diagnostics());
      if (!workbook.hasFaults()) {
        addValues(workbook.fill(), edits, found);
      }
      return told(found).replace(folder + "/", "");
    } catch (Loader.Unreadable bad) {
      return "[%s]%n%s%n  %s%n"
          .formatted(bad.code(), bad.message(), bad.repair())
          .replace(folder + "/", "");
    }
  }

  private static void addValues(Filled filled, List<String> edits, List<Diagnostic> found) {
    filled.faults().forEach(value -> found.add(DiagnosticReport.diagnostic(filled, value)));
    found.addAll(filled.pictureCautions());
    for (String edit : edits) {
      found.addAll(
          filled.edit(edit(filled, edit.replace('¶', '\n').replace('␣', ' '))).diagnostics());
    }
  }

  /**
   * An edit as a case says it: a word for its sort, a place or a table, and what is typed. A break
   * is written {@code ¶} there, a blank that ends a line {@code ␣}.
   */
  private static WorkbookEdit edit(Filled filled, String said) {
    String[] words = said.split(" ", 2);
    String[] sides = words[1].split(" =(?: |$)", 2);
    return switch (words[0]) {
      case "formula" -> new FormulaEdit(filled.spot(sides[0]).place(), sides[1]);
      case "cell" -> {
        Spot spot = filled.spot(sides[0]);
        yield new CellEdit((Column) spot.place(), spot.row(), sides[1]);
      }
      case "change" -> {
        String[] reason = sides[1].split(" because ", 2);
        String because = reason.length == 1 ? null : reason[1];
        yield new ChangeEdit(filled.spot(sides[0]).place(), -1, reason[0], because);
      }
      case "unchange" -> new ChangeRemoval(filled.spot(words[1]).place(), -1);
      case "line" -> new LineAddition(requireNonNull(filled.book().page("p")), words[1]);
      case "remove" -> {
        Spot spot = filled.spot(words[1]);
        yield new RowRemoval(((Column) spot.place()).table(), spot.row());
      }
      case "add" -> new RowAddition(requireNonNull(filled.book().table(words[1])), Map.of());
      default -> throw new IllegalArgumentException(said);
    };
  }

  private static String told(List<Diagnostic> found) {
    DiagnosticPrinter printer = new DiagnosticPrinter();
    StringBuilder told = new StringBuilder();
    Map<String, Integer> seen = new HashMap<>();
    for (Diagnostic each : found) {
      if (seen.merge(each.code(), 1, Integer::sum) <= MOST_OF_A_CODE) {
        told.append("[%s]%n".formatted(each.code())).append(printer.print(each));
      }
    }
    return told.toString();
  }

  /** Lays the files of the case and gives its edits. */
  private List<String> lay(Path folder, Path job) throws IOException {
    List<String> edits = new ArrayList<>();
    Path file = job;
    Files.writeString(job, "");
    for (String line : setting) {
      if (!line.startsWith(PART)) {
        append(file, line + "\n");
        continue;
      }
      String[] words = line.substring(PART.length()).split(" ", 3);
      boolean goesOn = words[0].equals("repeat") || words[0].equals("edit");
      file = goesOn ? file : folder.resolve(words[1]);
      switch (words[0]) {
        case "file" -> Files.writeString(file, "");
        case "folder" -> Files.createDirectory(file);
        case "loop" -> Files.createSymbolicLink(file, file);
        case "bytes" -> Files.write(file, HexFormat.of().parseHex(words[2]));
        case "repeat" -> append(file, repeated(Integer.parseInt(words[1]), words[2]));
        case "megabytes" -> enlarge(file, Long.parseLong(words[2]) << 20);
        case "formula" -> layFormula(file);
        case "socket" -> layNoFile(file);
        case "edit" -> edits.add(line.substring((PART + "edit ").length()));
        default -> throw new IllegalArgumentException(line);
      }
    }
    return edits;
  }

  private static void append(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardOpenOption.APPEND);
  }

  /** A text so many times; {@code #} in it is the number, {@code ¶} the end of a line. */
  private static String repeated(int times, String text) {
    return IntStream.rangeClosed(1, times)
        .mapToObj(number -> text.replace("#", Integer.toString(number)).replace('¶', '\n'))
        .collect(Collectors.joining());
  }

  /** A spreadsheet file of one row, whose name is a formula that no program has worked out. */
  private static void layFormula(Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = book.createSheet("list");
      sheet.createRow(0).createCell(0).setCellValue("name");
      sheet.createRow(1).createCell(0).setCellFormula("1+1");
      book.write(out);
    }
  }

  /** Something that has a name and is no ordinary file. */
  private static void layNoFile(Path file) throws IOException {
    try (var socket = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
      socket.bind(UnixDomainSocketAddress.of(file));
    }
  }

  /** A file of zeros, which takes no room on most disks. */
  private static void enlarge(Path file, long bytes) throws IOException {
    try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
      sparse.setLength(bytes);
    }
  }

  /** Reads all cases of a file. */
  static List<DiagnosticCase> readAll(Path file) throws IOException {
    return all(Files.readString(file, StandardCharsets.UTF_8));
  }
}
