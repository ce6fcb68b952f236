package org.cotyla.firing;

import java.util.List;
import org.cotyla.protocol.Row;
import org.cotyla.value.Truth;

/**
 * A row that fired: none of its tests is false.
 *
 * @param row the row
 * @param truths whether each of its tests holds; a test that is open may hold
 */
public record FiredRow(Row row, List<Truth> truths) {}
