/**
 * Sensible neighbours: what a small change of a case may and may not do to its answer, over
 * invented complete cases. Where the protocol breaks such a law on purpose, it is listed with the
 * reason.
 */
package org.cotyla.testcases.neighbours;
