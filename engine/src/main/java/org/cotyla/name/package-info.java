/** How plain-word names are compared, found in running text and suggested. Knows no tables. */
@NullMarked
package org.cotyla.name;

import org.jspecify.annotations.NullMarked;
