/**
 * From a draft to a protocol: every name, type, unit and table checked, every fault reported at
 * once.
 */
@NullMarked
package org.cotyla.compile;

import org.jspecify.annotations.NullMarked;
