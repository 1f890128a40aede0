package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PressureResponseTest {
    private final PleatPack pack =
            new PleatPack(PleatGeometry.radial(35e-3, 20e-3, 55, 0.8e-3, 0, 0, 0, PleatEnds.FOLDED), 55, 0.06);

    @Test
    void stiffPackStaysAsItIs() {
        assertEquals(
                pack.resistance(2.7e7),
                PressureResponse.STIFF.solve(pack, 2.7e7, 2e5).resistance(),
                0);
    }

    @Test
    void clampedLegsBowAsABeam() {
        // E 1 GPa, nu 0.3, t 0.6 mm, L 12 mm, 100 kPa: 0.273 mm at the center of each leg, 8/15 of it on the mean
        double closing = 1e5 * PressureResponse.closingOfClampedLegs(12e-3, 0.6e-3, 1e9, 0.3);
        assertEquals(2 * 0.273e-3 * 8 / 15, closing, 0.001e-3);
    }

    @Test
    void pressureRaisesTheResistanceUntilTheLegsTouchAndBeyond() {
        PressureResponse response = new PressureResponse(2e5, 0.5, 3e-9);
        double previous = 0;
        for (double drop = 0; drop <= 6e5; drop += 2e3) {
            double value = response.solve(pack, 2.7e7, drop).resistance();
            assertTrue(Double.isFinite(value) && value > previous, "drop " + drop);
            previous = value;
        }
        assertEquals(2.7e7 * Math.sqrt(2), response.mediumResistance(2.7e7, 2e5), 1);
    }

    @Test
    void embossingLimitsTheLoss() {
        PressureResponse response = new PressureResponse(Double.POSITIVE_INFINITY, 0, 3e-9);
        PleatPack embossed = new PleatPack(pack.geometry().withGapFloor(0.2e-3), 55, 0.06);
        assertTrue(response.solve(embossed, 2.7e7, 3e5).resistance()
                < response.solve(pack, 2.7e7, 3e5).resistance());
        assertEquals(
                response.solve(embossed, 2.7e7, 1e6).resistance(),
                response.solve(embossed, 2.7e7, 2e6).resistance(),
                0.02 * response.solve(embossed, 2.7e7, 1e6).resistance());
    }

    @Test
    void legsBowFromTheUpstreamIntoTheDownstreamChannel() {
        PleatGeometry before = pack.geometry();
        PleatGeometry after =
                new PressureResponse(1e5, 0, 2e-9).bowed(pack, 1e5).geometry();
        // 0.2 mm, along the whole leg
        assertEquals(before.upstreamMouth() + 0.2e-3, after.upstreamMouth(), 1e-18);
        assertEquals(before.upstreamEnd() + 0.2e-3, after.upstreamEnd(), 1e-18);
        assertEquals(before.downstreamEnd() - 0.2e-3, after.downstreamEnd(), 1e-18);
        assertEquals(before.downstreamMouth() - 0.2e-3, after.downstreamMouth(), 1e-18);
    }
}
