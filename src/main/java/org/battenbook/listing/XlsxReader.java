package org.battenbook.listing;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.battenbook.source.NearNames;
import org.battenbook.source.TextKey;
import org.jspecify.annotations.Nullable;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/**
 * Reads one page of an .xlsx file (ISO/IEC 29500) as a stream: what cells hold, a formula's stored
 * value, and no program's or other file's say in it.
 */
final class XlsxReader {
  private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

  private final String name;
  private final @Nullable String page;

  private XlsxReader(String name, @Nullable String page) {
    this.name = name;
    this.page = page;
  }

  /** The rows of a page, or of the first where none is named. */
  static List<List<String>> read(String name, byte[] bytes, @Nullable String page) throws BadList {
    return new XlsxReader(name, page).read(bytes);
  }

  private List<List<String>> read(byte[] bytes) throws BadList {
    try {
      try (OPCPackage file = OPCPackage.open(UnpackedParts.of(name, bytes))) {
        return rows(file);
      }
    } catch (SAXException failure) {
      if (failure.getException() instanceof BadList bad) {
        throw bad;
      }
      throw unreadable();
    } catch (IOException
        | OpenXML4JException
        | ParserConfigurationException
        | RuntimeException failure) {
      // A file made to harm fails in the library's own ways, unchecked ones among them.
      throw unreadable();
    }
  }

  private BadList unreadable() {
    return new BadList(
        "list-unreadable",
        "'%s' cannot be read as an .xlsx file".formatted(name),
        "open it in a spreadsheet program and save it as .xlsx, without a password");
  }

  private List<List<String>> rows(OPCPackage file)
      throws BadList, IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    XSSFReader reader = new XSSFReader(file);
    NumberStyles styles = new NumberStyles();
    try (InputStream data = reader.getStylesData()) {
      parse(data, styles.partsOfStyles());
    }
    try (InputStream data = reader.getWorkbookData()) {
      parse(data, styles.partsOfWorkbook());
    }
    RowGatherer rows = new RowGatherer(name);
    try (InputStream data = page(reader)) {
      parse(data, new PageHandler(name, styles, new ReadOnlySharedStringsTable(file), rows));
    }
    return rows.rows();
  }

  private InputStream page(XSSFReader reader) throws BadList, IOException, OpenXML4JException {
    XSSFReader.SheetIterator pages = (XSSFReader.SheetIterator) reader.getSheetsData();
    List<String> names = new ArrayList<>();
    while (pages.hasNext()) {
      InputStream data = pages.next();
      names.add(pages.getSheetName());
      if (page == null || TextKey.of(page).equals(TextKey.of(pages.getSheetName()))) {
        return data;
      }
      data.close();
    }
    throw page == null ? unreadable() : noSuchPage(page, names);
  }

  private BadList noSuchPage(String page, List<String> names) {
    String question = NearNames.question(page, names);
    return new BadList(
        "no-such-page",
        "'%s' has no page '%s'".formatted(name, page),
        question.isEmpty() ? "choose from: " + String.join(", ", names) : question);
  }

  /** Without definitions of its own a file can neither grow in reading nor name other files. */
  private static void parse(InputStream data, ContentHandler handler)
      throws IOException, SAXException, ParserConfigurationException {
    XMLReader parser = XMLHelper.newXMLReader();
    parser.setFeature(NO_DOCTYPE, true);
    parser.setContentHandler(handler);
    parser.parse(new InputSource(data));
  }
}
