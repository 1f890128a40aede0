package org.coldpleat.ui.desktop.viewmodel;

import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.OpenedCase;

/**
 * What the window shows a case for.
 *
 * @param opened the case
 * @param candidate name of the candidate that is looked at
 * @param state name of the state that is looked at
 * @param temperature of the oil [K]
 * @param units in which numbers are shown
 */
public record CaseView(OpenedCase opened, String candidate, String state, double temperature, UnitSystem units) {}
