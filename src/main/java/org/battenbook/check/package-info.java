/**
 * Type checking: finds the meaning, kind and dimension of every node of every formula before
 * anything is evaluated. Results are stored beside the syntax tree, by node id.
 */
@NullMarked
package org.battenbook.check;

import org.jspecify.annotations.NullMarked;
