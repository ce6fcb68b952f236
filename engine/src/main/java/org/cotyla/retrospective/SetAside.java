package org.cotyla.retrospective;

/**
 * Why a row could not be judged.
 *
 * @param row the row's number as a spreadsheet program shows it
 * @param column the heading of the column at fault; empty when it is the row as a whole
 * @param reason what is wrong, and what was expected
 */
public record SetAside(long row, String column, String reason) {}
