/**
 * Published values, held against the house protocol through the engine. Beside each check stands
 * its source, by its key in the protocol, and whether the value was found there, derived, or comes
 * from memory.
 */
package org.cotyla.testcases.published;
