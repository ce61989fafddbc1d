package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.battenbook.derive.Derivation;
import org.battenbook.workbook.Filled;
import org.jspecify.annotations.Nullable;

/** Where one value came from. */
public final class WhyAnswer {
  /**
   * The deepest that any answer goes. Each step nests two levels of JSON, and many readers take a
   * thousand.
   */
  public static final int MOST_STEPS = 400;

  private final Filled filled;
  private final Derivation derivation;
  private final int steps;

  private WhyAnswer(Filled filled, Derivation derivation, int steps) {
    this.filled = filled;
    this.derivation = derivation;
    this.steps = steps;
  }

  /** All of a derivation, down to what readers of JSON can take. */
  public static WhyAnswer of(Filled filled, Derivation derivation) {
    return of(filled, derivation, MOST_STEPS);
  }

  /** A derivation down to so many steps. */
  public static WhyAnswer of(Filled filled, Derivation derivation, int steps) {
    return new WhyAnswer(filled, derivation, Math.min(steps, MOST_STEPS));
  }

  /** Writes it as JSON in UTF-8; the stream is left open. */
  public void writeTo(OutputStream out) throws IOException {
    Json.write(out, this::write);
  }

  private void write(JsonGenerator json) throws IOException {
    json.writeStartObject();
    writeFields(json, derivation, steps);
    Json.editions(json, filled.book());
    json.writeEndObject();
  }

  private void write(JsonGenerator json, Derivation node, int stepsLeft) throws IOException {
    json.writeStartObject();
    writeFields(json, node, stepsLeft);
    json.writeEndObject();
  }

  private void writeFields(JsonGenerator json, Derivation node, int stepsLeft) throws IOException {
    json.writeStringField("place", node.place());
    json.writeFieldName("value");
    writeValue(json, node);
    json.writeStringField("withValues", node.withValues());
    json.writeArrayFieldStart("from");
    boolean isCut = stepsLeft == 0 && !node.from().isEmpty();
    for (Derivation from : isCut ? List.<Derivation>of() : node.from()) {
      write(json, from, stepsLeft - 1);
    }
    json.writeEndArray();
    if (isCut) {
      json.writeBooleanField("deeper", true);
    }
    writeCut(json, node);
    writeChanged(json, node.changed());
    writeOverride(json, node.override());
    writeRounding(json, node.rounding());
  }

  private void writeValue(JsonGenerator json, Derivation node) throws IOException {
    switch (node.how()) {
      case INHERITED, ROWS ->
          new ValueJson(json)
              .write(node.place(), node.shown(), node.value(), node.formula(), node.at().place());
      case WORKED_OUT, GIVEN, OPENED, DEFAULT, MISSING ->
          new ValueJson(json).write(filled.value(node.spot()));
    }
  }

  /** Where {@code from} does not list everything, it says so. */
  private static void writeCut(JsonGenerator json, Derivation node) throws IOException {
    if (node.isRepeated()) {
      json.writeBooleanField("repeated", true);
    }
    if (node.rowsLeftOut() > 0) {
      json.writeNumberField("rowsLeftOut", node.rowsLeftOut());
    }
  }

  private static void writeChanged(JsonGenerator json, Derivation.@Nullable Changed changed)
      throws IOException {
    if (changed == null) {
      json.writeNullField("changed");
      return;
    }
    json.writeObjectFieldStart("changed");
    json.writeStringField("from", changed.from());
    json.writeStringField("because", changed.because());
    json.writeEndObject();
  }

  /** What the formula gives where a row's cell was filled in by hand. */
  private static void writeOverride(JsonGenerator json, Derivation.@Nullable FilledByHand override)
      throws IOException {
    if (override == null) {
      json.writeNullField("override");
    } else {
      json.writeObjectFieldStart("override");
      json.writeStringField("instead", override.insteadShown().text());
      json.writeEndObject();
    }
  }

  private static void writeRounding(JsonGenerator json, Derivation.@Nullable Rounded rounding)
      throws IOException {
    if (rounding == null) {
      json.writeNullField("rounding");
      return;
    }
    json.writeObjectFieldStart("rounding");
    json.writeStringField("step", ExactText.of(rounding.step()));
    json.writeStringField("movedBy", ExactText.of(rounding.movedBy()));
    json.writeEndObject();
  }
}
