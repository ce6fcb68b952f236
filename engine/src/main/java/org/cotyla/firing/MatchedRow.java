package org.cotyla.firing;

import org.cotyla.protocol.Row;

/**
 * A row that fired.
 *
 * @param row the row
 * @param certain whether all its tests hold whatever the open data are; otherwise it may match
 */
public record MatchedRow(Row row, boolean certain) {}
