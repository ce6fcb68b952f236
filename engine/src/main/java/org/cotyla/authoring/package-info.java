/**
 * What a protocol's author needs in a spreadsheet: an empty protocol to start from, and tidying.
 */
@NullMarked
package org.cotyla.authoring;

import org.jspecify.annotations.NullMarked;
