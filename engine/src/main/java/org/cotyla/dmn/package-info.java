/**
 * Protocols as models of the DMN standard, and decision tables of such models as a protocol's
 * draft. Reads and writes XML with the JDK alone and runs nothing.
 */
@NullMarked
package org.cotyla.dmn;

import org.jspecify.annotations.NullMarked;
