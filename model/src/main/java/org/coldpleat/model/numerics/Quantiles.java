package org.coldpleat.model.numerics;

/**
 * Middle and 95 % band of a drawn answer; infinite for never and always, NaN without an answer.
 *
 * @param median as many draws below as above [SI of the answer]
 * @param low 2.5 % of the draws are below [SI]
 * @param high 2.5 % of the draws are above [SI]
 */
public record Quantiles(double median, double low, double high) {}
