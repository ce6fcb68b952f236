/**
 * Past cases with what was done, a row each, held against a protocol: read as a stream, judged on
 * all processors, and added up in totals that do not grow with the rows.
 */
@NullMarked
package org.cotyla.retrospective;

import org.jspecify.annotations.NullMarked;
