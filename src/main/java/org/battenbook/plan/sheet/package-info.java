/**
 * Plans how to cut rectangles from sheets at the minimum cost: the two-dimensional cutting stock
 * problem with guillotine cuts. Each plan has a lower bound on the cost of any plan. {@link
 * org.battenbook.plan.sheet.SheetPlanner} is the entry point.
 */
@NullMarked
package org.battenbook.plan.sheet;

import org.jspecify.annotations.NullMarked;
