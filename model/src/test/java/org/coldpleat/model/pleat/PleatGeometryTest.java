package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PleatGeometryTest {
    private static final double T = 0.7e-3;

    private static PleatGeometry radial(PleatEnds ends) {
        return PleatGeometry.radial(35e-3, 20e-3, 55, T, 0.3e-3, 0.2e-3, 0, ends);
    }

    /** Gaps from 0.6 to -0.2 mm upstream and from -0.1 to 0.5 mm downstream over a leg of 10 mm. */
    private static PleatGeometry crossing(double floor) {
        return new PleatGeometry(10e-3, T, 0.6e-3, -0.2e-3, -0.1e-3, 0.5e-3, 2e-3, 2e-3, floor, PleatEnds.PLUGGED);
    }

    @Test
    void panelPitchHoldsBothGapsAndBothLegs() {
        PleatGeometry pleat = PleatGeometry.rectangular(15e-3, T, 0.9e-3, 0.6e-3, PleatEnds.FOLDED);
        assertEquals(2.9e-3, pleat.inletPitch(), 1e-18);
        assertEquals(2.9e-3, pleat.outletPitch(), 1e-18);
        assertEquals(1, pleat.legCosine());
    }

    @Test
    void foldsTakeOneThicknessOfTheLegAtEachEnd() {
        assertEquals(13.6e-3, radial(PleatEnds.FOLDED).legLength(), 1e-17);
        assertEquals(15e-3, radial(PleatEnds.PLUGGED).legLength(), 1e-17);
    }

    @Test
    void sharpVeeHasLegsThatMeetAtItsTips() {
        for (PleatEnds ends : PleatEnds.values()) {
            double length = ends == PleatEnds.FOLDED ? 12e-3 : 12e-3 + 2 * T;
            PleatGeometry vee = PleatGeometry.vee(12e-3 + 2 * T, T, 1.2e-3, ends);
            assertEquals(0, vee.upstreamGap(1));
            assertEquals(0, vee.downstreamGap(0));
            assertEquals(1.2e-3, vee.upstreamGap(0));
            assertEquals(1.2e-3, vee.downstreamGap(1));
            // a leg leans by 0.6 mm over its length and is cut along the pitch, t/cos thick
            double across = T * Math.sqrt(length * length + 0.36e-6) / length;
            assertEquals(1.2e-3 + 2 * across, vee.inletPitch(), 1e-17);
            assertEquals(vee.inletPitch(), vee.outletPitch());
            assertEquals(T / across, vee.legCosine(), 1e-15);
        }
    }

    @Test
    void pleatsOnACoreStandAtTheTangentPolygonOfTheirFoldEnds() {
        double tangent = 2 * Math.tan(Math.PI / 55);
        assertEquals(tangent * 34.3e-3, radial(PleatEnds.FOLDED).inletPitch(), 1e-17);
        assertEquals(tangent * 20.7e-3, radial(PleatEnds.FOLDED).outletPitch(), 1e-17);
        assertEquals(tangent * 35e-3, radial(PleatEnds.PLUGGED).inletPitch(), 1e-17);
        assertEquals(tangent * 20e-3, radial(PleatEnds.PLUGGED).outletPitch(), 1e-17);
    }

    @Test
    void legsOnACoreLeanSoThatBothFoldsKeepTheirWidths() {
        for (PleatEnds ends : PleatEnds.values()) {
            PleatGeometry pleat = radial(ends);
            assertEquals(0.3e-3, pleat.downstreamGap(0), 1e-17);
            assertEquals(0.2e-3, pleat.upstreamGap(1), 1e-17);
            // a leg moves sideways by half of what its upstream gap loses, and is t/cos thick across the pitch
            double lean = (pleat.upstreamGap(0) - pleat.upstreamGap(1)) / 2;
            double across = T * Math.hypot(1, lean / pleat.legLength());
            assertEquals(pleat.inletPitch(), pleat.upstreamGap(0) + 0.3e-3 + 2 * across, 1e-16);
            assertEquals(pleat.outletPitch(), 0.2e-3 + pleat.downstreamGap(1) + 2 * across, 1e-16);
            assertEquals(T / across, pleat.legCosine(), 1e-15);
        }
    }

    @Test
    void legsPushedTogetherKeepOneDownstreamGapAndLeanByTheHalfAngle() {
        for (PleatEnds ends : PleatEnds.values()) {
            double fold = ends == PleatEnds.FOLDED ? T : 0;
            PleatGeometry pleat = PleatGeometry.radialLegsTogether(35e-3, 20e-3, 40, T, 0.4e-3, ends);
            double across = T / Math.cos(Math.PI / 40);
            double tangent = 2 * Math.tan(Math.PI / 40);
            assertEquals(0.4e-3, pleat.downstreamGap(0), 1e-17);
            assertEquals(0.4e-3, pleat.downstreamGap(1), 1e-17);
            assertEquals(tangent * (35e-3 - fold), pleat.inletPitch(), 1e-17);
            assertEquals(tangent * (20e-3 + fold), pleat.outletPitch(), 1e-17);
            assertEquals(pleat.inletPitch() - 2 * across - 0.4e-3, pleat.upstreamGap(0), 1e-17);
            assertEquals(pleat.outletPitch() - 2 * across - 0.4e-3, pleat.upstreamGap(1), 1e-17);
            assertEquals(Math.cos(Math.PI / 40), pleat.legCosine(), 1e-15);
        }
    }

    @Test
    void taperOfThePitchTellsTheCount() {
        assertEquals(55, radial(PleatEnds.FOLDED).pleatCount(), 1e-10);
        assertEquals(55, radial(PleatEnds.PLUGGED).pleatCount(), 1e-10);
        PleatGeometry flat = PleatGeometry.rectangular(15e-3, T, 0.9e-3, 0.6e-3, PleatEnds.FOLDED);
        assertThrows(IllegalArgumentException.class, flat::pleatCount);
    }

    @Test
    void otherCountOnTheSameCoreIsThePackMadeWithThatCount() {
        for (PleatEnds ends : PleatEnds.values()) {
            assertAlike(
                    PleatGeometry.radial(35e-3, 20e-3, 48, T, 0.3e-3, 0.2e-3, 0.05e-3, ends),
                    PleatGeometry.radial(35e-3, 20e-3, 55, T, 0.3e-3, 0.2e-3, 0.05e-3, ends)
                            .withPleatCount(48));
            assertAlike(
                    PleatGeometry.radialLegsTogether(35e-3, 20e-3, 36, T, 0.4e-3, ends)
                            .withGapFloor(0.1e-3),
                    PleatGeometry.radialLegsTogether(35e-3, 20e-3, 40, T, 0.4e-3, ends)
                            .withGapFloor(0.1e-3)
                            .withPleatCount(36));
        }
    }

    @Test
    void deeperPleatsGrowOutwardFromTheSameCore() {
        // legs of 13.6 mm between the folds and of 15 mm between plugs, half as long again
        assertAlike(
                PleatGeometry.radial(41.8e-3, 20e-3, 55, T, 0.3e-3, 0.2e-3, 0, PleatEnds.FOLDED),
                radial(PleatEnds.FOLDED).deeper(1.5));
        assertAlike(
                PleatGeometry.radial(42.5e-3, 20e-3, 55, T, 0.3e-3, 0.2e-3, 0, PleatEnds.PLUGGED),
                radial(PleatEnds.PLUGGED).deeper(1.5));
    }

    @Test
    void thickerMediumStandsBetweenTheSameDiameters() {
        for (PleatEnds ends : PleatEnds.values()) {
            assertAlike(
                    PleatGeometry.radial(35e-3, 20e-3, 55, 1.2 * T, 0.3e-3, 0.2e-3, 0, ends),
                    radial(ends).thicker(1.2));
            assertEquals(1.2 * T, radial(ends).thicker(1.2).thickness(), 1e-18);
        }
    }

    private static void assertAlike(PleatGeometry expected, PleatGeometry actual) {
        assertEquals(expected.pleatDepth(), actual.pleatDepth(), 1e-15);
        assertEquals(expected.upstreamMouth(), actual.upstreamMouth(), 1e-15);
        assertEquals(expected.upstreamEnd(), actual.upstreamEnd(), 1e-15);
        assertEquals(expected.downstreamEnd(), actual.downstreamEnd(), 1e-15);
        assertEquals(expected.downstreamMouth(), actual.downstreamMouth(), 1e-15);
        assertEquals(expected.inletPitch(), actual.inletPitch(), 1e-15);
        assertEquals(expected.outletPitch(), actual.outletPitch(), 1e-15);
        assertEquals(expected.gapFloor(), actual.gapFloor());
    }

    @Test
    void gapsRunStraightFromEndToEnd() {
        PleatGeometry pleat =
                new PleatGeometry(10e-3, T, 0.6e-3, 0.2e-3, 0.1e-3, 0.9e-3, 2e-3, 2e-3, 0, PleatEnds.PLUGGED);
        assertEquals(0.5e-3, pleat.upstreamGap(0.25), 1e-18);
        assertEquals(0.3e-3, pleat.downstreamGap(0.25), 1e-18);
    }

    @Test
    void crossedLegsTouchAndLeaveTheRoomToTheOtherChannel() {
        // at the inlet end 0.6 and -0.1 mm: together 0.5 mm, all of it upstream
        assertEquals(0.5e-3, crossing(0).upstreamGap(0), 1e-18);
        assertEquals(0, crossing(0).downstreamGap(0));
        // at the outlet end -0.2 and 0.5 mm
        assertEquals(0, crossing(0).upstreamGap(1));
        assertEquals(0.3e-3, crossing(0).downstreamGap(1), 1e-18);
        // at a tenth 0.52 and -0.04 mm
        assertEquals(0.48e-3, crossing(0).upstreamGap(0.1), 1e-18);
        // at half way 0.2 and 0.2 mm: no contact
        assertEquals(0.2e-3, crossing(0).upstreamGap(0.5), 1e-18);
    }

    @Test
    void embossingTakesItsGapFromTheOtherChannel() {
        assertEquals(0.05e-3, crossing(0.05e-3).downstreamGap(0), 1e-18);
        assertEquals(0.45e-3, crossing(0.05e-3).upstreamGap(0), 1e-18);
        assertEquals(0.05e-3, crossing(0.05e-3).upstreamGap(1), 1e-18);
        assertEquals(0.25e-3, crossing(0.05e-3).downstreamGap(1), 1e-18);
        // a floor that the pitch cannot hold twice is kept in both channels
        assertEquals(0.4e-3, crossing(0.4e-3).upstreamGap(1), 1e-18);
        assertEquals(0.4e-3, crossing(0.4e-3).downstreamGap(1), 1e-18);
    }

    @Test
    void floorHoldsWhereAStraightLegWouldLeaveLess() {
        assertTrue(crossing(0.05e-3).floorHolds(0));
        assertTrue(crossing(0.05e-3).floorHolds(1));
        assertFalse(crossing(0.05e-3).floorHolds(0.5));
        // downstream reaches 0.05 mm at a quarter, upstream at 0.6875 of the leg
        assertTrue(crossing(0.05e-3).floorHolds(0.24));
        assertFalse(crossing(0.05e-3).floorHolds(0.26));
        assertFalse(crossing(0.05e-3).floorHolds(0.68));
        assertTrue(crossing(0.05e-3).floorHolds(0.70));
    }

    @Test
    void floorDoesNotHoldWhereTheGapIsJustAsWide() {
        PleatGeometry even = PleatGeometry.rectangular(10e-3, T, 0.1e-3, 0.1e-3, PleatEnds.PLUGGED);
        assertFalse(even.withGapFloor(0.1e-3).floorHolds(0.5));
        assertTrue(even.withGapFloor(0.101e-3).floorHolds(0.5));
    }

    @Test
    void packIsCrowdedWhereTwoLegsFillThePitch() {
        // plugged: pitch from 3 to 1 mm over the leg, two legs of 0.7 mm: the last 0.4 of 2 mm
        assertEquals(0.2, pitched(3e-3, 1e-3, PleatEnds.PLUGGED).crowdedShare(), 1e-12);
        assertEquals(0.2, pitched(1e-3, 3e-3, PleatEnds.PLUGGED).crowdedShare(), 1e-12);
        assertEquals(0, pitched(3e-3, 1.5e-3, PleatEnds.PLUGGED).crowdedShare());
        assertEquals(1, pitched(1.2e-3, 1e-3, PleatEnds.PLUGGED).crowdedShare());
        assertEquals(0, pitched(1.4e-3, 1.4e-3, PleatEnds.PLUGGED).crowdedShare());
    }

    @Test
    void foldsCountToTheDepthOfACrowdedPack() {
        // 8.6 mm of leg, pitch 2.6 to 0.88 mm, so 0.2 mm a millimeter; straight on over both folds 2.74 to 0.74 mm
        assertEquals(
                (1.4 - 0.74) / 2, pitched(2.6e-3, 0.88e-3, PleatEnds.FOLDED).crowdedShare(), 1e-12);
    }

    private static PleatGeometry pitched(double inlet, double outlet, PleatEnds ends) {
        return new PleatGeometry(10e-3, T, 0.5e-3, 0.5e-3, 0.5e-3, 0.5e-3, inlet, outlet, 0, ends);
    }

    @Test
    void packThatCannotBeFoldedIsRefused() {
        // two folds and one thickness leave no leg of its own: three of 1/1024 m
        assertThrows(
                IllegalArgumentException.class,
                () -> PleatGeometry.radial(35.0 / 1024, 32.0 / 1024, 55, 1.0 / 1024, 0, 0, 0, PleatEnds.FOLDED));
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class,
                () -> PleatGeometry.radial(22.05e-3, 20e-3, 55, T, 0, 0, 0, PleatEnds.FOLDED));
        assertTrue(thrown.getMessage().contains("0.0021"), thrown.getMessage());
        assertEquals(
                3,
                PleatGeometry.radial(35e-3, 20e-3, 3, T, 0, 0, 0, PleatEnds.FOLDED)
                        .pleatCount(),
                1e-12);
        assertThrows(
                IllegalArgumentException.class,
                () -> PleatGeometry.rectangular(2 * T, T, 1e-3, 1e-3, PleatEnds.FOLDED));
        assertThrows(IllegalArgumentException.class, () -> crossing(-1e-9));
        assertThrows(IllegalArgumentException.class, () -> crossing(Double.POSITIVE_INFINITY));
    }
}
