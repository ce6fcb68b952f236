/** A recommendation as plain text of a given width. Knows no commands and no files. */
@NullMarked
package org.cotyla.cli.text;

import org.jspecify.annotations.NullMarked;
