package org.battenbook.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The parts of an .xlsx file (ISO/IEC 29500) in one text, so that fuzzing changes what is packed in
 * it: the sheet first, and each further part below a line {@code --- file NAME}. A part that is not
 * there is an ordinary one.
 */
final class XlsxParts {
  private static final String SPACE = "http://schemas.openxmlformats.org/";
  private static final String MAIN = SPACE + "spreadsheetml/2006/main";
  private static final String KIND = SPACE + "officeDocument/2006/relationships/";
  private static final String SHEET_PART = "xl/worksheets/sheet1.xml";

  static final String SHEET =
      """
      <worksheet xmlns="%s"><sheetData>
      <row r="1"><c r="A1" t="inlineStr"><is><t>name</t></is></c><c r="B1" t="s"><v>0</v></c>\
      <c r="C1" t="str"><v>sold</v></c><c r="D1" t="s"><v>1</v></c></row>
      <row r="3"><c r="A3" t="s"><v>2</v></c><c r="B3"><v>12.5</v></c><c t="b"><v>1</v></c>\
      <c s="1"><f>1+1</f><v>46095</v></c></row>
      </sheetData></worksheet>
      """
          .formatted(MAIN);

  private static final Map<String, String> ORDINARY = ordinary();

  private XlsxParts() {}

  private static Map<String, String> ordinary() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(
        "[Content_Types].xml",
        """
        <Types xmlns="%spackage/2006/content-types">
        <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
        <Default Extension="xml" ContentType="application/xml"/>
        %s%s%s%s</Types>
        """
            .formatted(
                SPACE,
                type("/xl/workbook.xml", "sheet.main"),
                type("/" + SHEET_PART, "worksheet"),
                type("/xl/styles.xml", "styles"),
                type("/xl/sharedStrings.xml", "sharedStrings")));
    parts.put("_rels/.rels", relations("officeDocument xl/workbook.xml"));
    parts.put(
        "xl/workbook.xml",
        """
        <workbook xmlns="%s" xmlns:r="%s"><workbookPr date1904="0"/>
        <sheets><sheet name="list" sheetId="1" r:id="r1"/></sheets></workbook>
        """
            .formatted(MAIN, KIND.substring(0, KIND.length() - 1)));
    parts.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            "worksheet worksheets/sheet1.xml",
            "styles styles.xml",
            "sharedStrings sharedStrings.xml"));
    parts.put(
        "xl/styles.xml",
        """
        <styleSheet xmlns="%s"><numFmts count="1"><numFmt numFmtId="164" formatCode="d mmm yyyy"/>\
        </numFmts><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="164"/></cellXfs></styleSheet>
        """
            .formatted(MAIN));
    parts.put(
        "xl/sharedStrings.xml",
        """
        <sst xmlns="%s"><si><t>face (mm)</t></si><si><t>since</t></si>\
        <si><r><t>ash</t></r><r><t xml:space="preserve"> cap</t></r></si></sst>
        """
            .formatted(MAIN));
    return parts;
  }

  private static String type(String part, String kind) {
    return "<Override PartName=\"%s\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.%s+xml\"/>%n"
        .formatted(part, kind);
  }

  /** Relations of the names r1, r2 and so on, each a kind and a target. */
  private static String relations(String... kindsAndTargets) {
    StringBuilder all = new StringBuilder();
    int count = 0;
    for (String one : kindsAndTargets) {
      String[] said = one.split(" ", 2);
      all.append(
          "<Relationship Id=\"r%d\" Type=\"%s\" Target=\"%s\"/>%n"
              .formatted(++count, KIND + said[0], said[1]));
    }
    return "<Relationships xmlns=\"%spackage/2006/relationships\">%n%s</Relationships>%n"
        .formatted(SPACE, all);
  }

  /** An ordinary file with every part written out. */
  static String all() {
    StringBuilder text = new StringBuilder(SHEET);
    ORDINARY.forEach(
        (name, part) -> text.append("--- file ").append(name).append('\n').append(part));
    return text.toString();
  }

  /** The file that the parts make. */
  static byte[] packed(byte[] input) throws IOException {
    Map<String, String> parts = new LinkedHashMap<>(ORDINARY);
    parts.putAll(FilesInOneText.of(input).texts());
    String sheet = parts.remove(FilesInOneText.JOB);
    parts.putIfAbsent(SHEET_PART, sheet == null ? "" : sheet);
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(packed)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(UTF_8));
      }
    }
    return packed.toByteArray();
  }
}
