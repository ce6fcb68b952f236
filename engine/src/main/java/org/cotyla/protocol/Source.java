package org.cotyla.protocol;

import org.cotyla.issue.CellRef;

/**
 * Where a statement comes from.
 *
 * @param key short stable key that rows name
 * @param citation what people look up
 * @param year the year, or empty when there is none
 * @param certainty how certain it is
 */
public record Source(String key, String citation, String year, Certainty certainty, CellRef at) {}
