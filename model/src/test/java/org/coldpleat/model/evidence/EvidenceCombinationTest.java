package org.coldpleat.model.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.ResourceBundle;
import org.coldpleat.model.medium.FiberFamily;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class EvidenceCombinationTest {
    private static ResistanceEvidence bench(double median, double lnSigma) {
        return new ResistanceEvidence(EvidenceKind.FLOW_BENCH, "", median, lnSigma, List.of());
    }

    private static ResistanceEvidence air(double median, double lnSigma) {
        return new ResistanceEvidence(EvidenceKind.AIR_TEST, "", median, lnSigma, List.of());
    }

    private static Measured measured(Kind kind, double value, double relative) {
        return new Measured(kind, value, value * relative, Spread.NORMAL, Provenance.MEASURED, 1, "");
    }

    @Test
    void oneSourceComesBackAsItIs() {
        EvidenceCombination alone = EvidenceCombination.combine(List.of(bench(2.7e7, 0.05)));
        assertEquals(2.7e7, alone.median(), 1);
        assertEquals(0.05, alone.lnSigma(), 1e-15);
        assertFalse(alone.conflict());
        assertThrows(IllegalArgumentException.class, () -> EvidenceCombination.combine(List.of()));
    }

    @Test
    void agreeingSourcesWeighByPrecision() {
        EvidenceCombination both = EvidenceCombination.combine(List.of(bench(2.0e7, 0.1), air(2.2e7, 0.2)));
        assertEquals(Math.exp((4 * Math.log(2.0e7) + Math.log(2.2e7)) / 5), both.median(), 1);
        assertEquals(1 / Math.sqrt(125), both.lnSigma(), 1e-12);
        assertEquals(0.8, both.weights().get(0), 1e-12);
        assertFalse(both.conflict());
    }

    @Test
    void conflictCoversAllAndNamesThem() {
        List<ResistanceEvidence> pair = List.of(bench(2.0e7, 0.05), air(6.0e7, 0.10));
        EvidenceCombination torn = EvidenceCombination.combine(pair);
        assertTrue(torn.conflict());
        assertEquals(2, torn.disagreeing().size());
        for (ResistanceEvidence member : pair) {
            assertTrue(torn.low() <= member.median() * Math.exp(-member.lnSigma()) * (1 + 1e-12));
            assertTrue(torn.high() >= member.median() * Math.exp(member.lnSigma()) * (1 - 1e-12));
        }
        assertEquals("medium.evidenceConflict", torn.notices("can").get(0).code());
    }

    @Test
    void theOddOneOutIsNamed() {
        ResistanceEvidence odd = new ResistanceEvidence(EvidenceKind.STATED, "web page", 9e7, 0.05, List.of());
        EvidenceCombination torn =
                EvidenceCombination.combine(List.of(bench(2.0e7, 0.1), air(2.1e7, 0.1), odd, bench(2.05e7, 0.1)));
        assertTrue(torn.conflict());
        assertTrue(torn.disagreeing().contains(odd));
        assertTrue(torn.high() >= 9e7);
    }

    @Test
    void anyOrderGivesTheSameBits() {
        List<ResistanceEvidence> list = new ArrayList<>(List.of(
                bench(2.0e7, 0.1),
                air(2.3e7, 0.15),
                ResistanceEvidence.ofFamily(FiberFamily.CELLULOSE),
                bench(2.1e7, 0.12),
                air(2.9e7, 0.3)));
        EvidenceCombination first = EvidenceCombination.combine(list);
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(list, random);
            assertEquals(first, EvidenceCombination.combine(list));
        }
    }

    @Test
    void weakKnowledgeHardlyMovesAGoodReadingAndSaysSoAlone() {
        ResistanceEvidence family = ResistanceEvidence.ofFamily(FiberFamily.CELLULOSE);
        EvidenceCombination both = EvidenceCombination.combine(List.of(bench(2.0e7, 0.05), family));
        assertEquals(2.0e7, both.median(), 0.02 * 2.0e7);
        EvidenceCombination alone = EvidenceCombination.combine(List.of(family));
        assertEquals("medium.evidenceWeak", alone.notices("can").get(0).code());
        assertTrue(alone.high() / alone.low() > 6);
    }

    @Test
    void unusualReadingIsNotDrownedByTheTypicalRange() {
        ResistanceEvidence family = ResistanceEvidence.ofFamily(FiberFamily.CELLULOSE);
        EvidenceCombination torn = EvidenceCombination.combine(List.of(bench(4 * family.median(), 0.05), family));
        assertTrue(torn.conflict());
        assertEquals(4 * family.median(), torn.median(), 0.03 * torn.median());
        // Touches the 68 % band of the typical range, but does not take in all of it
        assertTrue(torn.low() <= family.median() * Math.exp(family.lnSigma()) * (1 + 1e-12));
        assertTrue(torn.low() > family.low());
    }

    @Test
    void denseSheetIsNoticed() {
        ResistanceEvidence dense = StructureEvidence.of(
                "",
                Measured.exact(Kind.FRACTION, 0.4, Provenance.MEASURED),
                Measured.exact(Kind.LENGTH, 10e-6, Provenance.MEASURED),
                Measured.exact(Kind.LENGTH, 0.6e-3, Provenance.MEASURED));
        assertEquals(
                "medium.solidityOutsideLaws",
                EvidenceCombination.combine(List.of(dense))
                        .notices("can")
                        .get(0)
                        .code());
    }

    @Test
    void everyNoticeHasItsText() {
        ResourceBundle texts = ResourceBundle.getBundle("org.coldpleat.shared.notice.notices");
        for (String code : List.of(
                "medium.evidenceConflict",
                "medium.evidenceWeak",
                "medium.solidityOutsideLaws",
                "area.routesDisagree",
                "area.factorTwo",
                "area.depthsDisagree",
                "area.statedDisagrees",
                "pleat.channelsUnknown",
                "pleat.crowded",
                "pleat.legsTouch",
                "pleat.gapFloorHolds",
                "pleat.narrowGap")) {
            String text = MessageFormat.format(texts.getString(code), "FIRST", "SECOND", "THIRD");
            assertFalse(text.contains("{"), text);
        }
    }

    @Test
    void structureIsAtBestGoodToAFactorTwo() {
        ResistanceEvidence structure = StructureEvidence.of(
                "",
                Measured.exact(Kind.FRACTION, 0.15, Provenance.MEASURED),
                Measured.exact(Kind.LENGTH, 10e-6, Provenance.MEASURED),
                Measured.exact(Kind.LENGTH, 0.6e-3, Provenance.MEASURED));
        // Geometric mean of 0.22620, 0.14289 and 0.19607 (Davies, Kuwabara, Happel at 0.15)
        double mean = Math.cbrt(0.22620 * 0.14289 * 0.19607);
        assertEquals(0.6e-3 / (mean * 1e-10), structure.median(), 1e-4 * structure.median());
        assertTrue(structure.high() / structure.median() > 2);
    }

    @Test
    void fiberDiameterCountsTwiceAndThicknessPartlyCancels() {
        Measured weight = measured(Kind.BASIS_WEIGHT, 0.120, 1e-9);
        Measured density = measured(Kind.DENSITY, 1500, 1e-9);
        Measured thickness = measured(Kind.LENGTH, 0.55e-3, 1e-9);
        Measured diameter = measured(Kind.LENGTH, 10e-6, 1e-9);
        ResistanceEvidence sure = StructureEvidence.ofSheet("", weight, density, diameter, thickness);
        ResistanceEvidence unsure =
                StructureEvidence.ofSheet("", weight, density, measured(Kind.LENGTH, 10e-6, 0.3), thickness);
        assertEquals(0.6, Math.sqrt(square(unsure.lnSigma()) - square(sure.lnSigma())), 1e-6);
        ResistanceEvidence thick =
                StructureEvidence.ofSheet("", weight, density, diameter, measured(Kind.LENGTH, 0.55e-3, 0.1));
        double byThickness = Math.sqrt(square(thick.lnSigma()) - square(sure.lnSigma()));
        ResistanceEvidence thicker = StructureEvidence.ofSheet(
                "", weight, density, diameter, measured(Kind.LENGTH, 0.55e-3 * Math.exp(1e-3), 1e-9));
        double slope = Math.log(thicker.median() / sure.median()) / 1e-3;
        assertEquals(Math.abs(slope) * 0.1, byThickness, 1e-3);
    }

    private static double square(double value) {
        return value * value;
    }

    @Test
    void airTestCorrectsForSlipAndInertia() {
        Measured drop = measured(Kind.PRESSURE_DIFFERENCE, 200, 0.02);
        Measured velocity = measured(Kind.FACE_VELOCITY, 0.4, 0.02);
        ResistanceEvidence raw =
                AirTestEvidence.of("", drop, velocity, 293.15, OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(2.76e7, raw.median(), 0.01e7);
        ResistanceEvidence slip =
                AirTestEvidence.of("", drop, velocity, 293.15, OptionalDouble.of(20e-6), OptionalDouble.empty());
        assertEquals(1.026, slip.median() / raw.median(), 0.001);
        ResistanceEvidence inertia =
                AirTestEvidence.of("", drop, velocity, 293.15, OptionalDouble.empty(), OptionalDouble.of(0.6e-3));
        assertTrue(inertia.median() < raw.median() && inertia.lnSigma() > raw.lnSigma());
    }

    @Test
    void poreSizesOnlyGiveTheOrder() {
        Measured solidity = measured(Kind.FRACTION, 0.165, 0.1);
        Measured thickness = measured(Kind.LENGTH, 0.6e-3, 0.05);
        ResistanceEvidence bubble =
                PoreEvidence.ofBubblePoint("", measured(Kind.LENGTH, 50e-6, 0.05), solidity, thickness);
        assertTrue(bubble.lnSigma() > PoreEvidence.BUNDLE_LN_SIGMA);
        ResistanceEvidence family = ResistanceEvidence.ofFamily(FiberFamily.CELLULOSE);
        assertTrue(bubble.median() > family.low() && bubble.median() < family.high());
    }
}
