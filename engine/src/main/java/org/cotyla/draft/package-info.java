/**
 * What a protocol says, still as text, each piece remembering its cell. The meeting point of every
 * file format.
 */
@NullMarked
package org.cotyla.draft;

import org.jspecify.annotations.NullMarked;
