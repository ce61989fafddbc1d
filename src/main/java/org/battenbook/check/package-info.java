/** Kinds and dimensions of every formula, before anything is worked out. */
@NullMarked
package org.battenbook.check;

import org.jspecify.annotations.NullMarked;
