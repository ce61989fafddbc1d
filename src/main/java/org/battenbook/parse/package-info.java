/** From text to syntax: lexer, token pass, statements, rows. Alone imports ANTLR. */
@NullMarked
package org.battenbook.parse;

import org.jspecify.annotations.NullMarked;
