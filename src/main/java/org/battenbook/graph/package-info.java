/**
 * What needs what: the order to work things out in, circles, and what one thing feeds. Generic in
 * its key; imports the JDK alone.
 */
@NullMarked
package org.battenbook.graph;

import org.jspecify.annotations.NullMarked;
