package org.cotyla.protocol;

import org.cotyla.issue.CellRef;

/** One entry of a protocol's history. */
public record Change(
    String version, String date, String authorRole, String what, String why, CellRef at) {}
