package org.coldpleat.ui.service;

import java.util.OptionalDouble;

/**
 * What a candidate is as it stands, best values of all that its sheet and its tests say.
 *
 * @param openingPressure of its own bypass valve [Pa]; empty without one
 * @param grossArea unfolded medium, one side [m2]
 * @param freeShare share of it that no cap or glue bead hides [1]
 * @param foldShare share of the strip that the folds take [1]; 0 if the strip was not measured
 * @param mediumResistance [1/m]
 */
public record Present(OptionalDouble openingPressure, double grossArea, double freeShare, double foldShare, double mediumResistance) {}
