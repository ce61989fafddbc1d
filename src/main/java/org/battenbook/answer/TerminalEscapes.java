package org.battenbook.answer;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import org.battenbook.source.DisplayText;
import org.jspecify.annotations.Nullable;

/** Escapes in JSON, beyond what JSON asks for, each character that a terminal would act on. */
final class TerminalEscapes extends CharacterEscapes {
  private static final long serialVersionUID = 1;
  private static final int DELETE = 0x7F;

  @Override
  public int[] getEscapeCodesForAscii() {
    int[] codes = standardAsciiEscapesForJSON();
    codes[DELETE] = ESCAPE_STANDARD;
    return codes;
  }

  @Override
  public @Nullable SerializableString getEscapeSequence(int c) {
    return DisplayText.isObeyed(c) ? new SerializedString("\\u%04X".formatted(c)) : null;
  }
}
