/** Exact rationals, approximate numbers with their bound, and rounding. Imports the JDK alone. */
@NullMarked
package org.battenbook.number;

import org.jspecify.annotations.NullMarked;
