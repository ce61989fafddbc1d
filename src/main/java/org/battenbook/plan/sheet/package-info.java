/**
 * Plans which rectangle to cut from which sheet with through-cuts, at the least cost, and says how
 * far from the least a plan can be. {@link org.battenbook.plan.sheet.SheetPlanner} is the entry. It
 * fills panels, joins pieces to blocks, and searches pools of blocks.
 */
@NullMarked
package org.battenbook.plan.sheet;

import org.jspecify.annotations.NullMarked;
