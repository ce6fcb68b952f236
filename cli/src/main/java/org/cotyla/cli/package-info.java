/** The commands: what is asked for, where it is read from and where the answer goes. */
@NullMarked
package org.cotyla.cli;

import org.jspecify.annotations.NullMarked;
