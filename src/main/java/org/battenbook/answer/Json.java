package org.battenbook.answer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import org.battenbook.book.Book;
import org.battenbook.book.Edition;

/**
 * Opens the one kind of JSON text that is written: UTF-8, indented, lines ended alike everywhere,
 * and with nothing in it that a terminal would act on.
 */
final class Json {
  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

  private static final Separators SEPARATORS =
      Separators.createDefaultInstance()
          .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
          .withObjectEmptySeparator("")
          .withArrayEmptySeparator("");

  private Json() {}

  /** Writes one value. */
  interface Content {
    void write(JsonGenerator json) throws IOException;
  }

  /** Writes a text of one value and a line's end; the stream is left open. */
  static void write(OutputStream out, Content content) throws IOException {
    JsonFactory factory =
        new JsonFactoryBuilder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .characterEscapes(new TerminalEscapes())
            .build();
    try (JsonGenerator json = factory.createGenerator(out)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter(SEPARATORS)
              .withObjectIndenter(INDENTER)
              .withArrayIndenter(INDENTER));
      content.write(json);
      json.writeRaw('\n');
    }
  }

  /** Writes which editions a job was calculated with. */
  static void editions(JsonGenerator json, Book book) throws IOException {
    json.writeArrayFieldStart("editions");
    for (Edition edition : book.editions()) {
      json.writeStartObject();
      json.writeStringField("file", edition.file().name());
      json.writeStringField("edition", edition.name());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Writes a field that holds an array. */
  static void array(JsonGenerator json, String name, Content elements) throws IOException {
    json.writeArrayFieldStart(name);
    elements.write(json);
    json.writeEndArray();
  }
}
