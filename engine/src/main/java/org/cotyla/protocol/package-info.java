/**
 * A protocol as an immutable model: fields, options, decision tables, sources. Knows no file
 * format.
 */
@NullMarked
package org.cotyla.protocol;

import org.jspecify.annotations.NullMarked;
