package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.derive.Feeds;
import org.battenbook.number.Rational;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;

/** What depends on one value. */
public final class FeedsAnswer {
  private final Filled filled;
  private final Spot spot;
  private final List<Feeds.Fed> fed;

  private FeedsAnswer(Filled filled, Spot spot, List<Feeds.Fed> fed) {
    this.filled = filled;
    this.spot = spot;
    this.fed = List.copyOf(fed);
  }

  public static FeedsAnswer of(Filled filled, Spot spot, List<Feeds.Fed> fed) {
    return new FeedsAnswer(filled, spot, fed);
  }

  /** Writes it as JSON in UTF-8; the stream is left open. */
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::write);
  }

  private void write(JsonGenerator json) throws IOException {
    FilledValue value = filled.value(spot);
    json.writeStartObject();
    json.writeStringField("place", value.words());
    json.writeFieldName("value");
    new ValueJson(json).write(value);
    json.writeArrayFieldStart("feeds");
    for (Feeds.Fed one : fed) {
      write(json, one);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(JsonGenerator json, Feeds.Fed one) throws IOException {
    if (one instanceof Feeds.Fed.Rows rows) {
      writeRows(json, rows);
      return;
    }
    Feeds.Fed.Values place = (Feeds.Fed.Values) one;
    for (int row : place.rows()) {
      write(json, place, row);
    }
  }

  private static void writeRows(JsonGenerator json, Feeds.Fed.Rows rows) throws IOException {
    json.writeStartObject();
    json.writeStringField("place", rows.words());
    json.writeBooleanField("direct", rows.isDirect());
    json.writeFieldName("value");
    Value count = new Value.Amount(Quantity.of(Rational.of(rows.count())));
    new ValueJson(json).write(rows.words(), rows.shown(), count, rows.opening(), rows.at().place());
    json.writeEndObject();
  }

  private void write(JsonGenerator json, Feeds.Fed.Values place, int row) throws IOException {
    FilledValue value = filled.value(new Spot(place.place(), row));
    json.writeStartObject();
    json.writeStringField("place", value.words());
    json.writeBooleanField("direct", place.isDirect());
    json.writeFieldName("value");
    new ValueJson(json).write(value);
    json.writeEndObject();
  }
}
