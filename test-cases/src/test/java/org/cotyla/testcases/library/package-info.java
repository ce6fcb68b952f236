/** The case library: invented cases, what is expected of them, and whether every row is reached. */
@NullMarked
package org.cotyla.testcases.library;

import org.jspecify.annotations.NullMarked;
