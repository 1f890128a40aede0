package org.coldpleat.model.verdict;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.Band;

/**
 * What the bench sheet of one candidate amounts to.
 *
 * @param grossArea unfolded medium, one side, after allowances [m2]
 * @param effectiveArea area that the oil can pass after buried edges and folds [m2]
 * @param basisWeight mass per area [kg/m2], if it can be known
 * @param solidity fiber volume share [1], if it can be known
 * @param mediumResistance thickness over permeability, all evidence combined [1/m]
 * @param permeability Darcy permeability [m2], if the thickness is known
 * @param evidence what the resistance rests on
 * @param channelFactor resistance of the pleat pack over that of the medium alone [1]
 * @param crowdedShare share of the pleat depth over which legs touch [1]
 * @param hotPressureDrop clean drop of the whole filter at the hot reference point [Pa]
 * @param hotReference the state and temperature of {@code hotPressureDrop}
 * @param openingPressure valve difference at which the bypass valve starts to open [Pa]; empty without a valve
 */
public record CandidateSheet(
        Band grossArea,
        Band effectiveArea,
        OptionalDouble basisWeight,
        OptionalDouble solidity,
        Band mediumResistance,
        OptionalDouble permeability,
        List<EvidenceLine> evidence,
        Band channelFactor,
        double crowdedShare,
        Band hotPressureDrop,
        HotReference hotReference,
        Optional<Band> openingPressure) {
    public CandidateSheet {
        evidence = List.copyOf(evidence);
    }

    /**
     * One source of knowledge about the medium resistance.
     *
     * @param kind key of the evidence kind
     * @param resistance median [1/m]
     * @param lnSigma standard uncertainty of its natural logarithm [1]
     * @param weight share of the combined estimate [1]
     */
    public record EvidenceLine(String kind, double resistance, double lnSigma, double weight) {}

    /**
     * Where the clean hot drop is taken.
     *
     * @param state name of the state
     * @param temperature oil temperature [K]
     */
    public record HotReference(String state, double temperature) {}
}
