package org.battenbook.parse;

import java.util.List;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.SourceText;
import org.battenbook.syntax.WorkbookFile;

public final class WorkbookParser {
  public static WorkbookFile parse(SourceText t, Diagnostics d) {
    return new WorkbookFile(t, null, List.of(), null, null, List.of(), List.of(), List.of());
  }
}
