/** One file per operator or function: dimension rule, exact meaning, wording, spreadsheet text. */
@NullMarked
package org.battenbook.operation;

import org.jspecify.annotations.NullMarked;
