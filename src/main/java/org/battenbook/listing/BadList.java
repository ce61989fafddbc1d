package org.battenbook.listing;

import org.battenbook.source.Explained;

/** Why a list cannot be read; the message names the file and the row. */
public final class BadList extends Explained {
  private static final long serialVersionUID = 1;

  BadList(String code, String message, String repair) {
    super(code, message, repair);
  }
}
