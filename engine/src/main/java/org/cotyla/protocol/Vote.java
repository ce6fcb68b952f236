package org.cotyla.protocol;

import java.math.BigDecimal;

/**
 * What a row does to an option.
 *
 * @param option the option's name
 * @param effect what it does
 * @param points how much, above 0 for favour and oppose; 0 for rule out
 */
public record Vote(String option, Effect effect, BigDecimal points) {}
