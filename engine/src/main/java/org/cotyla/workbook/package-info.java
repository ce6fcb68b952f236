/**
 * From the bytes of an {@code .xlsx} workbook to a protocol: the archive, the grid of cells, the
 * sheets. The only package that reads spreadsheet files; it does not know what a cell's text means.
 */
@NullMarked
package org.cotyla.workbook;

import org.jspecify.annotations.NullMarked;
