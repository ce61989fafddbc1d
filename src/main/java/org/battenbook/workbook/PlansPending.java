package org.battenbook.workbook;

import java.util.List;

/** A workbook was to be exported or kept while plans are still to be made. */
public final class PlansPending extends IllegalStateException {
  private static final long serialVersionUID = 1;

  PlansPending(List<String> plans) {
    super(
        "these plans are not made yet: '%s'. Call Filled.planned() first"
            .formatted(String.join("', '", plans)));
  }
}
