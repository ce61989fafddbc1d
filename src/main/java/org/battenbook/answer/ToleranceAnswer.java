package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import org.battenbook.derive.ErrorBudget;
import org.battenbook.unit.Quantity;
import org.battenbook.value.Value;
import org.battenbook.workbook.Filled;
import org.battenbook.workbook.FilledValue;
import org.jspecify.annotations.Nullable;

/** How far one value may be off, and by what. */
public record ToleranceAnswer(Filled filled, FilledValue value, ErrorBudget errors) {

  /** Writes it as JSON in UTF-8; the stream is left open. */
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::write);
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("place", value.words());
    json.writeFieldName("value");
    new ValueJson(json).write(value);
    json.writeStringField("worst", exact(errors.worst()));
    json.writeStringField("rootSumSquare", exact(errors.rootSumSquare()));
    json.writeArrayFieldStart("sources");
    for (ErrorBudget.Source source : errors.sources()) {
      write(json, source);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("open");
    for (String open : errors.open()) {
      json.writeString(open);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(JsonGenerator json, ErrorBudget.Source source) throws IOException {
    FilledValue of = filled.value(source.spot());
    json.writeStartObject();
    json.writeStringField("place", of.words());
    json.writeStringField("tolerance", exact(source.tolerance()));
    json.writeStringField("coefficient", exact(source.coefficient()));
    json.writeStringField("contribution", exact(source.contribution()));
    json.writeStringField("at", of.at());
    json.writeEndObject();
  }

  private static @Nullable String exact(@Nullable Quantity quantity) {
    return quantity == null ? null : ExactText.of(new Value.Amount(quantity));
  }
}
