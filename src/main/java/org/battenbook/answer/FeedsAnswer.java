package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.battenbook.bind.Spot;
import org.battenbook.derive.Feeds;
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
    for (Feeds.Fed place : fed) {
      for (int row : place.rows()) {
        write(json, place, row);
      }
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(JsonGenerator json, Feeds.Fed place, int row) throws IOException {
    FilledValue value = filled.value(new Spot(place.place(), row));
    json.writeStartObject();
    json.writeStringField("place", value.words());
    json.writeBooleanField("direct", place.isDirect());
    json.writeFieldName("value");
    new ValueJson(json).write(value);
    json.writeEndObject();
  }
}
