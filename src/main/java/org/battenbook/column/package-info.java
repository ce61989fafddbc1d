/**
 * Columns in chunks of 1024 rows, held in lanes: whole ticks of one size as longs, and what does
 * not fit those in wider lanes. Kernels work on a chunk at a time, exactly, and know no formulas.
 * Imports {@code number} alone.
 */
@NullMarked
package org.battenbook.column;

import org.jspecify.annotations.NullMarked;
