package org.cotyla.protocol;

import org.cotyla.issue.CellRef;

/**
 * Something that may come of a decision, of the list that a protocol offers.
 *
 * @param name its name
 * @param counts how it counts in a reckoning over time
 * @param meaning one sentence
 */
public record Outcome(String name, Counts counts, String meaning, CellRef at) {}
