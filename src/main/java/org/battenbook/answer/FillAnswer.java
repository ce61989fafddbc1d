package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.battenbook.book.Column;
import org.battenbook.book.Line;
import org.battenbook.book.Page;
import org.battenbook.book.Table;
import org.battenbook.source.Diagnostic;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.Verdict;
import org.battenbook.workbook.Workbook;
import org.jspecify.annotations.Nullable;

/** A filled workbook, or the faults that keep it from being filled. */
public final class FillAnswer {
  private final Workbook workbook;
  private final @Nullable Filled filled;

  private FillAnswer(Workbook workbook, @Nullable Filled filled) {
    this.workbook = workbook;
    this.filled = filled;
  }

  /** The answer for a workbook that was filled. */
  public static FillAnswer of(Workbook workbook, Filled filled) {
    return new FillAnswer(workbook, filled);
  }

  /** The answer for a workbook with faults: no pages, and what is wrong. */
  public static FillAnswer atFault(Workbook workbook) {
    return new FillAnswer(workbook, null);
  }

  /** Writes it as JSON in UTF-8; the stream is left open. */
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::write);
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("workbook", workbook.title());
    json.writeStringField("file", workbook.file());
    if (filled != null) {
      Json.editions(json, filled.book());
    }
    Json.array(json, "pages", this::writePages);
    Json.array(json, "checks", this::writeRequirements);
    Json.array(json, "cautions", this::writeCautions);
    Json.array(json, "general", this::writeStanding);
    Json.array(json, "errors", this::writeFaults);
    json.writeEndObject();
  }

  private void writePages(JsonGenerator json) throws IOException {
    if (filled != null) {
      for (Page page : filled.book().pages()) {
        writePage(json, filled, page);
      }
    }
  }

  private static void writePage(JsonGenerator json, Filled filled, Page page) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", page.name().text());
    json.writeArrayFieldStart("lines");
    for (Line line : page.lines()) {
      new ValueJson(json).write(filled.value(line));
    }
    json.writeEndArray();
    json.writeArrayFieldStart("tables");
    for (Table table : page.tables()) {
      writeTable(json, filled, table);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void writeTable(JsonGenerator json, Filled filled, Table table)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("name", table.name().text());
    json.writeArrayFieldStart("columns");
    for (Column column : table.columns()) {
      json.writeString(column.name().text());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("rows");
    for (int row = 0; row < filled.rows(table).count(); row++) {
      writeRow(json, filled, table, row);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void writeRow(JsonGenerator json, Filled filled, Table table, int row)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("row", filled.rows(table).name(row));
    json.writeObjectFieldStart("values");
    for (Column column : table.columns()) {
      FilledValue value = filled.value(column, row);
      if (!value.staysEmpty()) {
        json.writeFieldName(column.name().text());
        new ValueJson(json).write(value);
      }
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void writeRequirements(JsonGenerator json) throws IOException {
    if (filled != null) {
      writeVerdicts(json, "passes", filled.requirements());
    }
  }

  private void writeCautions(JsonGenerator json) throws IOException {
    for (Diagnostic diagnostic : workbook.diagnostics()) {
      if (!diagnostic.isFault()) {
        json.writeStartObject();
        json.writeBooleanField("applies", true);
        endWithTextAndPlace(json, text(diagnostic), diagnostic.span().place());
      }
    }
    if (filled != null) {
      writeVerdicts(json, "applies", filled.cautions());
    }
  }

  private void writeStanding(JsonGenerator json) throws IOException {
    if (filled != null) {
      for (Verdict caution : filled.standingCautions()) {
        writeTextAndPlace(json, caution.text(), caution.at());
      }
    }
  }

  private static void writeVerdicts(JsonGenerator json, String word, List<Verdict> verdicts)
      throws IOException {
    for (Verdict verdict : verdicts) {
      json.writeStartObject();
      if (verdict.value().isKnown()) {
        json.writeBooleanField(word, verdict.isYes());
      } else {
        json.writeNullField(word);
      }
      endWithTextAndPlace(json, verdict.text(), verdict.at());
    }
  }

  private void writeFaults(JsonGenerator json) throws IOException {
    writeFaults(json, workbook, filled == null ? List.of() : filled.faults());
  }

  /** What is wrong with the text, and with values. */
  static void writeFaults(JsonGenerator json, Workbook workbook, List<FilledValue> faults)
      throws IOException {
    for (Diagnostic diagnostic : workbook.diagnostics()) {
      if (diagnostic.isFault()) {
        writeTextAndPlace(json, text(diagnostic), diagnostic.span().place());
      }
    }
    for (FilledValue value : faults) {
      if (value.value() instanceof Value.Fault fault) {
        writeTextAndPlace(json, value.words() + ": " + fault.message(), value.at());
      }
    }
  }

  private static String text(Diagnostic diagnostic) {
    return diagnostic.repair().isEmpty()
        ? diagnostic.message()
        : diagnostic.message() + "; " + diagnostic.repair();
  }

  /** An object that says something, and where the workbook does. */
  static void writeTextAndPlace(JsonGenerator json, String text, String at) throws IOException {
    json.writeStartObject();
    endWithTextAndPlace(json, text, at);
  }

  private static void endWithTextAndPlace(JsonGenerator json, String text, String at)
      throws IOException {
    json.writeStringField("text", text);
    json.writeStringField("at", at);
    json.writeEndObject();
  }
}
