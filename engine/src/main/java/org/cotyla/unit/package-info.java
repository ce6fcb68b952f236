/** Units of measurement by their UCUM codes; the only package that sees the units library. */
@NullMarked
package org.cotyla.unit;

import org.jspecify.annotations.NullMarked;
