package org.battenbook.saving;

import java.io.IOException;
import java.io.OutputStream;

/** What a file is to hold. */
public interface Content {

  /** Writes it; whether the stream is closed does not matter. */
  void writeTo(OutputStream out) throws IOException;

  static Content of(byte[] bytes) {
    return out -> out.write(bytes);
  }
}
