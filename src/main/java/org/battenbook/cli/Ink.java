package org.battenbook.cli;

/** Colours, by what they are for; on anything but a terminal none of them leaves a trace. */
enum Ink {
  HEADING("1"),
  FAULT("1;31"),
  CAUTION("33"),
  ASIDE("2");

  private static final String ESCAPE = "\u001b[";

  private final String code;

  Ink(String code) {
    this.code = code;
  }

  String paint(String text) {
    return ESCAPE + code + "m" + text + ESCAPE + "0m";
  }
}
