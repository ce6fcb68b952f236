package org.cotyla.protocol;

import java.time.LocalDate;
import java.util.Optional;
import org.cotyla.issue.CellRef;

/**
 * A warning that the protocol's owner has looked at and accepts.
 *
 * @param code the warning's code
 * @param about the row id, name or cell that the warning is about
 * @param because why it is accepted
 * @param by the role that accepted it
 * @param date when, if stated
 * @param at the cell of its code
 */
public record Acceptance(
    String code, String about, String because, String by, Optional<LocalDate> date, CellRef at) {}
