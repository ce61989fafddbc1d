package org.battenbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What the spreadsheet library logs of a bad list, in a process that sets up logging itself. */
class SilentLoggingTest {
  private static final String DOCTYPE =
      "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/hostname\">]><x>&a;</x>";
  private static final String JOB =
      """
      page prices
        table prices by name
          given
            name  : text
            price : money
        rows of prices from "list.xlsx"
      """;

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> a_bad_list_is_told_by_our_message_alone() throws IOException {
    byte[] list = list();
    Map<String, byte[]> bad = new LinkedHashMap<>();
    bad.put("kinds of parts", with(list, "[Content_Types].xml", DOCTYPE));
    bad.put("relations", with(list, "_rels/.rels", DOCTYPE));
    bad.put("no document", with(list, "xl/workbook.xml", DOCTYPE));
    bad.put("truncated", Arrays.copyOf(list, list.length / 2));
    return bad.entrySet().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getKey(),
                    () ->
                        assertThat(told(file.getValue()).lines())
                            .first()
                            .asString()
                            .contains("'list.xlsx' cannot be read as an .xlsx file")));
  }

  @Test
  void a_list_with_a_part_that_leads_elsewhere_is_read_in_silence() throws Exception {
    byte[] leading = with(list(), "../../../../x", "<x/>");
    assertThat(told(leading)).doesNotContain("ERROR", "WARN", "../");
  }

  private String told(byte[] list) throws IOException, InterruptedException {
    Path job = folder.resolve("job.batten");
    Files.writeString(job, JOB);
    Files.write(folder.resolve("list.xlsx"), list);
    return CommandRun.withMemory("256m", "fill", job.toString()).err();
  }

  private static byte[] list() throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      book.createSheet().createRow(0).createCell(0).setCellValue("name");
      book.getSheetAt(0).getRow(0).createCell(1).setCellValue("price");
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      book.write(out);
      return out.toByteArray();
    }
  }

  /** The same file, where a part has another text, or is added. */
  private static byte[] with(byte[] file, String name, String text) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
        parts.put(part.getName(), in.readAllBytes());
      }
    }
    parts.put(name, text.getBytes(StandardCharsets.UTF_8));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        out.putNextEntry(new ZipEntry(part.getKey()));
        out.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }
}
