package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.battenbook.book.Column;
import org.battenbook.keep.Keeping;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledPlan;
import org.battenbook.workbook.FilledRow;
import org.battenbook.workbook.FilledValue;
import org.battenbook.workbook.PlannedMaterial;
import org.battenbook.workbook.PlannedMaterial.Measure;
import org.battenbook.workbook.PlannedMaterial.Piece;
import org.battenbook.workbook.PlannedMaterial.Stop;
import org.battenbook.workbook.TakenStock;
import org.battenbook.workbook.Verdict;
import org.battenbook.workbook.Workbook;

/** The cut list of a workbook's plans, or the faults that keep it from being filled. */
public final class CutsAnswer {
  private final Workbook workbook;
  private final List<FilledPlan> plans;
  private final List<Verdict> standing;
  private final List<FilledValue> faults;
  private final List<Keeping.Change> kept;

  private CutsAnswer(
      Workbook workbook,
      List<FilledPlan> plans,
      List<Verdict> standing,
      List<FilledValue> faults,
      List<Keeping.Change> kept) {
    this.workbook = workbook;
    this.plans = plans;
    this.standing = standing;
    this.faults = faults;
    this.kept = kept;
  }

  /**
   * The answer for some plans of a workbook that was filled.
   *
   * @param kept what was changed in its files
   */
  public static CutsAnswer of(
      Workbook workbook, Filled filled, List<FilledPlan> plans, List<Keeping.Change> kept) {
    return new CutsAnswer(workbook, plans, filled.standingCautions(), filled.faults(), kept);
  }

  /** The answer for a workbook with faults: no plans, and what is wrong. */
  public static CutsAnswer atFault(Workbook workbook) {
    return new CutsAnswer(workbook, List.of(), List.of(), List.of(), List.of());
  }

  /** Writes it as JSON in UTF-8; the stream is left open. */
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::write);
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("workbook", workbook.title());
    json.writeStringField("file", workbook.file());
    Json.array(json, "plans", this::writePlans);
    Json.array(json, "general", this::writeStanding);
    Json.array(json, "errors", this::writeFaults);
    Json.array(json, "updates", this::writeKept);
    json.writeEndObject();
  }

  private void writeKept(JsonGenerator json) throws IOException {
    for (Keeping.Change change : kept) {
      json.writeStartObject();
      json.writeStringField("file", change.file());
      json.writeStringField("change", change.told());
      json.writeEndObject();
    }
  }

  private void writePlans(JsonGenerator json) throws IOException {
    for (FilledPlan plan : plans) {
      json.writeStartObject();
      json.writeStringField("name", plan.name());
      json.writeStringField("of", plan.isOfSticks() ? "sticks" : "sheets");
      json.writeArrayFieldStart("materials");
      for (PlannedMaterial material : plan.materials()) {
        writeMaterial(json, material);
      }
      json.writeEndArray();
      json.writeArrayFieldStart("stock");
      for (TakenStock stock : plan.stock()) {
        writeStock(json, stock);
      }
      json.writeEndArray();
      Json.array(json, "failed", broken -> writeVerdicts(broken, plan.broken()));
      json.writeEndObject();
    }
  }

  private static void writeMaterial(JsonGenerator json, PlannedMaterial material)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("material", material.name());
    json.writeBooleanField("proven", material.isProven());
    writeMeasure(json, "used", material.used());
    writeMeasure(json, "bound", material.bound());
    json.writeArrayFieldStart("stops");
    for (Stop stop : material.stops()) {
      startRow(json, stop.row());
      json.writeArrayFieldStart("cuts");
      for (FilledRow cut : stop.cuts()) {
        json.writeString(cut.name());
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("taken");
    for (Piece piece : material.taken()) {
      writePiece(json, piece);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void writeMeasure(JsonGenerator json, String name, Measure measure)
      throws IOException {
    json.writeObjectFieldStart(name);
    json.writeStringField("exact", measure.number().toString());
    json.writeStringField("unit", measure.unit());
    json.writeEndObject();
  }

  private static void writePiece(JsonGenerator json, Piece piece) throws IOException {
    startRow(json, piece.row());
    writeRows(json, "pieces", piece.pieces());
    writeRows(json, "cuts", piece.cuts());
    writeRows(json, "offcuts", piece.offcuts());
    json.writeEndObject();
  }

  private static void writeRows(JsonGenerator json, String name, List<FilledRow> rows)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (FilledRow row : rows) {
      startRow(json, row);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void startRow(JsonGenerator json, FilledRow row) throws IOException {
    json.writeStartObject();
    json.writeStringField("row", row.name());
    json.writeObjectFieldStart("values");
    for (Column column : row.columns()) {
      FilledValue value = row.value(column);
      if (!value.staysEmpty()) {
        json.writeFieldName(column.name().text());
        new ValueJson(json).write(value);
      }
    }
    json.writeEndObject();
  }

  private static void writeStock(JsonGenerator json, TakenStock stock) throws IOException {
    json.writeStartObject();
    json.writeStringField("stock", stock.name());
    json.writeNumberField("taken", stock.taken());
    json.writeNumberField("fromStock", stock.fromStock());
    json.writeNumberField("toBuy", stock.toBuy());
    json.writeFieldName("price");
    if (stock.price().isPresent()) {
      new ValueJson(json).write(stock.price().get());
    } else {
      json.writeNull();
    }
    json.writeEndObject();
  }

  private void writeStanding(JsonGenerator json) throws IOException {
    writeVerdicts(json, standing);
  }

  private static void writeVerdicts(JsonGenerator json, List<Verdict> verdicts) throws IOException {
    for (Verdict verdict : verdicts) {
      FillAnswer.writeTextAndPlace(json, verdict.text(), verdict.at());
    }
  }

  private void writeFaults(JsonGenerator json) throws IOException {
    FillAnswer.writeFaults(json, workbook, faults);
  }
}
