/** Small faults put into the house workbook, and whether checking and comparing tell each. */
@NullMarked
package org.cotyla.testcases.faults;

import org.jspecify.annotations.NullMarked;
