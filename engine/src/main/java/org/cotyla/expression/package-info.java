/**
 * The cells of a table: S-FEEL tests and formulas, parsed once and evaluated over possible values.
 */
@NullMarked
package org.cotyla.expression;

import org.jspecify.annotations.NullMarked;
