package org.cotyla.protocol;

import org.cotyla.issue.CellRef;

/**
 * A reason for departing from a recommendation, of the list that a protocol offers.
 *
 * @param name its name
 * @param meaning one sentence
 */
public record Reason(String name, String meaning, CellRef at) {}
