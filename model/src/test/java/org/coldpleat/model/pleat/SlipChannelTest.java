package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SlipChannelTest {
    @Test
    void solidWallsLeavePlanePoiseuilleFlow() {
        // h^3/12: 0.6 mm
        assertEquals(1.8e-11, SlipChannel.conductance(0.6e-3, 0, 0), 1e-25);
    }

    @Test
    void slipAndSheetsAddToTheChannel() {
        // h^2 b/2 = 0.36e-6 x 5e-6/2 = 9e-13; 2 h k = 1.2e-3 x 3e-11 = 3.6e-14
        assertEquals(1.8e-11 + 9e-13 + 3.6e-14, SlipChannel.conductance(0.6e-3, 5e-6, 3e-11), 1e-25);
    }

    @Test
    void slipOfTheSheetWidensTheChannelByTwiceTheRootOfItsPermeability() {
        // (h + 2 sqrt k)^3/12 = h^3/12 + h^2 sqrt(k)/2 + h k + ...: the boundary layers in the sheets add another h k
        double root = 1e-6;
        double wider = Math.pow(0.6e-3 + 2 * root, 3) / 12;
        assertEquals(wider + 0.6e-3 * root * root, SlipChannel.conductance(0.6e-3, root, root * root), 1e-18);
    }

    @Test
    void mouthOfAThinSlitLosesItsCreepingEntrance() {
        // 4.99/h^2; the blockage of 1/1000 of the pitch is lost in the digits
        assertEquals(4.99e8, SlipChannel.mouthLoss(1e-4, 0.1, 1e-11), 1e3);
    }

    @Test
    void mouthLosesLessTheMoreOfThePitchItTakes() {
        // x = 0.5: 4.99 (1 - 0.1025 - 0.008125) = 4.43798; x = 0.8: 4.99 (1 - 0.2624 - 0.053248) = 3.41491
        assertEquals(4.43798e6, SlipChannel.mouthLoss(1e-3, 2e-3, 1e-11), 10);
        assertEquals(3.41492e6, SlipChannel.mouthLoss(1e-3, 1.25e-3, 1e-11), 10);
    }

    @Test
    void oilLeavesThroughTheSheetWhereTheMouthIsNearlyClosed() {
        assertEquals(1e11, SlipChannel.mouthLoss(0, 2e-3, 1e-11), 1);
        assertEquals(1e11, SlipChannel.mouthLoss(7e-6, 2e-3, 1e-11), 1);
        // beyond sqrt(4.99 k) = 7.06 um the mouth itself
        assertEquals(4.99 / 64e-12, SlipChannel.mouthLoss(8e-6, 2e-3, 1e-11), 1e-4 / 64e-12);
    }

    @Test
    void mouthNeverCountsAsWiderThanThePitch() {
        // 1 - 0.41 - 0.13 = 0.46
        assertEquals(4.99 * 0.46 / 9e-6, SlipChannel.mouthLoss(3e-3, 2e-3, 1e-11), 1e-6);
    }

    @Test
    void foldPassesOilInProportionToItsWidthAndAtItsCorners() {
        double k = 3e-11;
        assertEquals(0.92 * k, SlipChannel.foldConductance(0, 0.8e-3, k, true), 1e-25);
        // half a thickness wide: 0.92 + 0.5 + 0.16
        assertEquals(1.58 * k, SlipChannel.foldConductance(0.4e-3, 0.8e-3, k, true), 1e-25);
        // a tenth: the corners are half built up, 0.92 + 0.1 + 0.08
        assertEquals(1.10 * k, SlipChannel.foldConductance(0.08e-3, 0.8e-3, k, true), 1e-25);
        assertEquals(0.92 * k, SlipChannel.foldConductance(0.4e-3, 0.8e-3, k, false), 1e-25);
    }
}
