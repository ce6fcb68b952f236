/**
 * Case forms: a spreadsheet with a row for every finding that a protocol asks for, written empty
 * and read filled in. Besides the reader of workbooks the only package that sees the spreadsheet
 * library.
 */
@NullMarked
package org.cotyla.caseform;

import org.jspecify.annotations.NullMarked;
