package org.coldpleat.shared.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class MeasuredTest {
    private static Measured spread(double value, double halfWidth, Spread spread) {
        return new Measured(Kind.LENGTH, value, halfWidth, spread, Provenance.PRINTED, 4, "as written");
    }

    @Test
    void exactValueHasNoUncertaintyAndNoBand() {
        Measured exact = Measured.exact(Kind.LENGTH, 2, Provenance.PRINTED);
        assertEquals(0, exact.standardUncertainty());
        assertEquals(2, exact.low());
        assertEquals(2, exact.high());
    }

    @Test
    void normalValueLiesWithinTwoUncertaintiesNineteenTimesOfTwenty() {
        // 1.96 standard deviations hold 95 % of a normal distribution (JCGM 100:2008, table G.1).
        Measured normal = spread(10, 0.5, Spread.NORMAL);
        assertEquals(0.5, normal.standardUncertainty());
        assertEquals(9.02, normal.low(), 1e-12);
        assertEquals(10.98, normal.high(), 1e-12);
    }

    @Test
    void intervalIsItsOwnBandAndItsUncertaintyIsItsHalfOverRootThree() {
        Measured interval = Measured.between(Kind.LENGTH, 1, 4, Provenance.PRINTED);
        assertEquals(1.5 / Math.sqrt(3), interval.standardUncertainty(), 1e-15);
        assertEquals(1, interval.low());
        assertEquals(4, interval.high());
    }

    @Test
    void valueKnownWithinAFactorHasABandOfFactors() {
        // 95 % band from a half to the double: ln 2 are 1.96 standard uncertainties of the logarithm.
        double lnSigma = Math.log(2) / 1.96;
        Measured factor = Measured.factor(Kind.LENGTH, 8, lnSigma, Provenance.TYPICAL);
        assertEquals(8 * lnSigma, factor.standardUncertainty(), 1e-14);
        assertEquals(4, factor.low(), 1e-14);
        assertEquals(16, factor.high(), 1e-14);
    }

    @Test
    void intervalMayShrinkToOneValueButNotTurnRound() {
        assertEquals(3, Measured.between(Kind.LENGTH, 3, 3, Provenance.PRINTED).value());
        assertThrows(IllegalArgumentException.class, () -> Measured.between(Kind.LENGTH, 3, 2.9, Provenance.PRINTED));
    }

    @Test
    void anotherProvenanceOrSpreadKeepsTheRest() {
        Measured value = spread(10, 0.5, Spread.NORMAL);
        assertEquals(
                new Measured(Kind.LENGTH, 10, 0.5, Spread.NORMAL, Provenance.GUESSED, 4, "as written"),
                value.from(Provenance.GUESSED));
        assertEquals(spread(10, 2, Spread.RECTANGULAR), value.withSpread(2, Spread.RECTANGULAR));
    }

    @Test
    void whatIsNoMeasurementIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> spread(Double.NaN, 0, Spread.NONE));
        assertThrows(IllegalArgumentException.class, () -> spread(1, -1e-9, Spread.NORMAL));
        assertThrows(IllegalArgumentException.class, () -> spread(1, Double.POSITIVE_INFINITY, Spread.NORMAL));
        assertThrows(IllegalArgumentException.class, () -> spread(0, 0.1, Spread.LOG_NORMAL));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Measured(Kind.LENGTH, 1, 0, Spread.NONE, Provenance.PRINTED, 0, ""));
    }
}
