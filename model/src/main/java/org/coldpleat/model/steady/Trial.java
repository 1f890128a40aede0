package org.coldpleat.model.steady;

/**
 * One candidate in one state without bands, clean or with dirt: what can be shown while a value is tried.
 *
 * @param curve over the whole range of oil temperature, with what is open of it
 * @param valveDifference what the faces of the bypass valve see at the temperature asked for [Pa]; NaN without an answer
 * @param bypassShare share of the oil that goes round the medium there [1]; NaN without an answer
 */
public record Trial(QuickCurves.Candidate curve, double valveDifference, double bypassShare) {
    /**
     * What is tried.
     *
     * @param candidate name of a candidate of the case
     * @param state name of a state of the case
     * @param temperature oil temperature [K], within -40 to 150 degrees C
     * @param packRatio resistance of the pack over its clean one [1], at least 1; 1 is clean
     */
    public record Request(String candidate, String state, double temperature, double packRatio) {
        public Request {
            if (!(packRatio >= 1) || Double.isInfinite(packRatio)) {
                throw new IllegalArgumentException("packRatio must be finite and at least 1, was " + packRatio);
            }
        }
    }
}
