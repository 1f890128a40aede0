package org.coldpleat.ui.service;

/**
 * The oil temperatures that a case looks at.
 *
 * @param from coldest [K]
 * @param to warmest [K]
 */
public record OilRange(double from, double to) {}
