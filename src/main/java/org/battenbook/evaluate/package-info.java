/** Fills a checked book: compiled formulas, the order they run in, and results. */
@NullMarked
package org.battenbook.evaluate;

import org.jspecify.annotations.NullMarked;
