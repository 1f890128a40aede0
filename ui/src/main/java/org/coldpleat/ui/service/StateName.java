package org.coldpleat.ui.service;

/**
 * A state that a case can be worked out in.
 *
 * @param setting {@code engine} or {@code flowStand}
 * @param name name of the state
 */
public record StateName(String setting, String name) {}
