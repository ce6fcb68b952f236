/** What differs between two answers of one protocol, and which rows make the difference. */
@NullMarked
package org.cotyla.explain;

import org.jspecify.annotations.NullMarked;
