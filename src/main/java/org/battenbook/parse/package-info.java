/** From text to syntax: scanner, token pass, statements, rows. Alone imports ANTLR. */
@NullMarked
package org.battenbook.parse;

import org.jspecify.annotations.NullMarked;
