package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.battenbook.unit.Shown;
import org.battenbook.value.Value;
import org.battenbook.workbook.FilledValue;

/** The shape of one value, wherever it stands. */
final class ValueJson {
  private final JsonGenerator json;

  ValueJson(JsonGenerator json) {
    this.json = json;
  }

  void write(FilledValue value) throws IOException {
    write(value.name(), value.shown(), value.value(), value.formula(), value.at());
  }

  /** What stands at no spot of its own: which rows a table has, or what a change inherits. */
  void write(String name, Shown shown, Value value, String formula, String at) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", name);
    json.writeStringField("shown", shown.text());
    writeExact(value);
    json.writeStringField("unit", FilledValue.unit(value));
    json.writeBooleanField("approximate", FilledValue.isApproximate(value));
    json.writeStringField("formula", formula);
    json.writeStringField("at", at);
    json.writeEndObject();
  }

  /** A value that is at fault or waits has no exact one. */
  private void writeExact(Value value) throws IOException {
    if (value.isKnown()) {
      json.writeStringField("exact", FilledValue.exact(value));
    } else {
      json.writeNullField("exact");
    }
  }
}
