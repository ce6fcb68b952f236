/** A recommendation as a page to look at, with pictures: as HTML and as PDF. Knows no commands. */
@NullMarked
package org.cotyla.cli.report;

import org.jspecify.annotations.NullMarked;
