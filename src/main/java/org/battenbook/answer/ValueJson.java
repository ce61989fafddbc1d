package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.battenbook.workbook.FilledValue;

/** The shape of one value, wherever it stands. */
final class ValueJson {
  private final JsonGenerator json;

  ValueJson(JsonGenerator json) {
    this.json = json;
  }

  void write(FilledValue value) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", value.name());
    json.writeStringField("shown", value.shown().text());
    writeExact(value);
    json.writeStringField("unit", value.unit());
    json.writeBooleanField("approximate", value.isApproximate());
    json.writeStringField("formula", value.formula());
    json.writeStringField("at", value.at());
    json.writeEndObject();
  }

  /** A value that is at fault or waits has no exact one. */
  private void writeExact(FilledValue value) throws IOException {
    if (value.value().isKnown()) {
      json.writeStringField("exact", value.exact());
    } else {
      json.writeNullField("exact");
    }
  }
}
