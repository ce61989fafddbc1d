package org.battenbook.edit;

import org.battenbook.source.Explained;

/** Why an edit cannot be made in the text of a workbook. */
public final class EditRefused extends Explained {
  private static final long serialVersionUID = 1;

  EditRefused(String code, String message, String repair) {
    super(code, message, repair);
  }
}
