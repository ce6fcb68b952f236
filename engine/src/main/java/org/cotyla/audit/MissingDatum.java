package org.cotyla.audit;

/**
 * A datum that was missing, or known in part only, when something was decided.
 *
 * @param decisions at how many decisions
 * @param mightChangeFirst at how many of them it might have changed a first place
 */
public record MissingDatum(String field, long decisions, long mightChangeFirst) {}
