package org.battenbook.listing;

import org.apache.poi.xssf.model.SharedStrings;
import org.battenbook.bound.Bound;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Takes the cells of one page out of an .xlsx file's own parts, as they stream by. */
final class PageHandler extends DefaultHandler {
  private final String name;
  private final NumberStyles styles;
  private final SharedStrings shared;
  private final RowGatherer rows;
  private final StringBuilder content = new StringBuilder();

  private int row;
  private int column = -1;
  private String type = "";
  private int style;
  private boolean hasFormula;
  private boolean hasValue;
  private boolean isRead;
  private boolean inPronunciation;

  PageHandler(String name, NumberStyles styles, SharedStrings shared, RowGatherer rows) {
    this.name = name;
    this.styles = styles;
    this.shared = shared;
    this.rows = rows;
  }

  @Override
  public void startElement(String space, String element, String qualified, Attributes of) {
    switch (element) {
      case "row" -> startRow(of);
      case "c" -> startCell(of);
      case "f" -> hasFormula = true;
      case "rPh" -> inPronunciation = true;
      case "v", "t" -> {
        hasValue = true;
        isRead = !inPronunciation;
      }
      default -> {}
    }
  }

  private void startRow(Attributes of) {
    String number = of.getValue("r");
    row = number == null ? row + 1 : Integer.parseInt(number);
    column = -1;
  }

  private void startCell(Attributes of) {
    String address = of.getValue("r");
    column = address == null ? column + 1 : column(address);
    String given = of.getValue("t");
    type = given == null ? "n" : given;
    String number = of.getValue("s");
    style = number == null ? 0 : Integer.parseInt(number);
    hasFormula = false;
    hasValue = false;
    content.setLength(0);
  }

  /** The column of an address as the format has it, A1, counted from 0. */
  private static int column(String address) {
    int column = 0;
    for (int i = 0; i < address.length() && Character.isLetter(address.charAt(i)); i++) {
      column = Math.min(column, Bound.LIST_COLUMNS.most()) * 26 + address.charAt(i) - 'A' + 1;
    }
    return column - 1;
  }

  @Override
  public void characters(char[] text, int start, int length) throws SAXException {
    if (isRead) {
      content.append(text, start, length);
      if (Bound.LIST_CELL.isPassedBy(content.length())) {
        keep(content.toString());
      }
    }
  }

  @Override
  public void endElement(String space, String element, String qualified) throws SAXException {
    switch (element) {
      case "c" -> keep(text());
      case "rPh" -> inPronunciation = false;
      case "v", "t" -> isRead = false;
      default -> {}
    }
  }

  @Override
  public void endDocument() throws SAXException {
    try {
      rows.endRow();
    } catch (BadList bad) {
      throw new SAXException(bad);
    }
  }

  private String text() throws SAXException {
    if (hasFormula && !hasValue) {
      throw new SAXException(
          new BadList(
              "formula-without-value",
              "a formula in row %s of '%s' has no value in the file".formatted(row, name),
              "open the file in a spreadsheet program, and save it again"));
    }
    String text = content.toString();
    return text.isEmpty()
        ? text
        : switch (type) {
          case "n" -> styles.text(Double.parseDouble(text), style);
          case "s" -> shared.getItemAt(Integer.parseInt(text)).getString();
          case "b" -> text.equals("1") ? "yes" : "no";
          default -> text;
        };
  }

  private void keep(String text) throws SAXException {
    if (text.isBlank()) {
      return;
    }
    try {
      if (row < rows.rowNumber()) {
        throw new SAXException("rows are out of order");
      }
      rows.goTo(row);
      rows.cell(column, text);
    } catch (BadList bad) {
      throw new SAXException(bad);
    }
  }
}
