package org.cotyla.audit;

/** What came of choosing an option, over time. */
public record OutcomeCurve(String ranking, String option, String outcome, Survival survival) {}
