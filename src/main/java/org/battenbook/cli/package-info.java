/** The command line: commands, exit statuses, the terminal and the files that are written. */
@NullMarked
package org.battenbook.cli;

import org.jspecify.annotations.NullMarked;
