/** Reads libraries of past cases: folders of case files, and tables of comma-separated values. */
@NullMarked
package org.cotyla.library;

import org.jspecify.annotations.NullMarked;
