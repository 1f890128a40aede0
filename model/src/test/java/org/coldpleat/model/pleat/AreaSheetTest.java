package org.coldpleat.model.pleat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.junit.jupiter.api.Test;

class AreaSheetTest {
    private static final Measured HEIGHT = length(60e-3, 0.5e-3);
    private static final Measured NO_GLUE = Measured.exact(Kind.LENGTH, 0, Provenance.MEASURED);

    private static Measured length(double value, double sigma) {
        return new Measured(Kind.LENGTH, value, sigma, Spread.NORMAL, Provenance.MEASURED, 1, "");
    }

    private static Measured count(double value) {
        return new Measured(Kind.COUNT, value, 1, Spread.NORMAL, Provenance.MEASURED, 1, "");
    }

    private static Measured counted() {
        return AreaRoutes.counted(count(55), length(14e-3, 0.5e-3), HEIGHT);
    }

    private static Measured strip(double stripLength) {
        return AreaRoutes.strip(length(stripLength, 5e-3), HEIGHT);
    }

    private static AreaSheet sheet(Optional<Measured> strip, Optional<Measured> stated, Measured glue) {
        return AreaSheet.of(strip, Optional.of(counted()), stated, HEIGHT, glue, "can");
    }

    private static String code(AreaSheet sheet) {
        return sheet.notices().isEmpty() ? "" : sheet.notices().get(0).code();
    }

    @Test
    void countDepthAndHeightGiveTheArea() {
        assertEquals(0.0924, counted().value(), 1e-12);
        // 143.2 square inches
        assertEquals(143.2, counted().value() / 0.0254 / 0.0254, 0.05);
        // Count 1.8 %, depth 3.6 %, height 0.8 %, folds 2 %
        assertEquals(0.046, counted().standardUncertainty() / counted().value(), 0.001);
    }

    @Test
    void agreeingStripIsUsedWithoutNotice() {
        AreaSheet sheet = sheet(Optional.of(strip(1.540)), Optional.empty(), NO_GLUE);
        assertEquals(0.0924, sheet.gross().value(), 1e-12);
        // 5 mm of 1540 mm and 0.5 mm of 60 mm: 0.9 %
        assertEquals(0.009, sheet.gross().standardUncertainty() / sheet.gross().value(), 0.0002);
        assertEquals("", code(sheet));
    }

    @Test
    void glueBuriesBothEnds() {
        AreaSheet sheet = sheet(Optional.empty(), Optional.empty(), length(2.5e-3, 0.5e-3));
        assertEquals(0.0847, sheet.effective().value(), 1e-12);
        assertTrue(sheet.effective().standardUncertainty() > 0.0847 * 0.046);
    }

    @Test
    void halfTheAreaAsksForAFactorTwo() {
        Measured stated =
                new Measured(Kind.AREA, 71.6 * 0.0254 * 0.0254, 0, Spread.NONE, Provenance.PRINTED, 1, "71.6 in2");
        AreaSheet sheet = sheet(Optional.empty(), Optional.of(stated), NO_GLUE);
        assertEquals("area.factorTwo", code(sheet));
        assertEquals("462 cm² (72 in²)", sheet.notices().get(0).values().get(0).text());
        assertEquals("area.factorTwo", code(sheet(Optional.of(strip(0.770)), Optional.empty(), NO_GLUE)));
        assertEquals("area.factorTwo", code(sheet(Optional.of(strip(3.080)), Optional.empty(), NO_GLUE)));
    }

    @Test
    void otherDisagreementIsNamed() {
        assertEquals("area.routesDisagree", code(sheet(Optional.of(strip(1.250)), Optional.empty(), NO_GLUE)));
        assertEquals("", code(sheet(Optional.of(strip(1.450)), Optional.empty(), NO_GLUE)));
    }

    @Test
    void allowancesAreSigned() {
        Measured corrected = AreaRoutes.corrected(
                length(1.500, 3e-3),
                List.of(
                        new Allowance("sample cut out", length(0.050, 1e-3)),
                        new Allowance("seam overlap", length(-0.010, 0.5e-3))));
        assertEquals(1.540, corrected.value(), 1e-12);
        assertEquals(Math.sqrt(9 + 1 + 0.25) * 1e-3, corrected.standardUncertainty(), 1e-12);
        assertThrows(
                IllegalArgumentException.class,
                () -> AreaRoutes.corrected(length(0.010, 0), List.of(new Allowance("overlap", length(-0.010, 0)))));
    }

    @Test
    void depthsFromStripAndDiametersAreCompared() {
        Measured fromStrip = AreaRoutes.depthFromStrip(length(1.540, 5e-3), count(55));
        assertEquals(14e-3, fromStrip.value(), 1e-12);
        Measured fromDiameters = AreaRoutes.depthFromDiameters(length(70e-3, 0.5e-3), length(42e-3, 0.5e-3));
        assertEquals(14e-3, fromDiameters.value(), 1e-12);
        assertTrue(AreaSheet.compareDepths(fromStrip, fromDiameters, "can").isEmpty());
        Measured longer = AreaRoutes.depthFromDiameters(length(75e-3, 0.5e-3), length(42e-3, 0.5e-3));
        assertEquals(
                "area.depthsDisagree",
                AreaSheet.compareDepths(fromStrip, longer, "can").orElseThrow().code());
    }

    @Test
    void noRouteIsWrongUse() {
        assertThrows(
                IllegalArgumentException.class,
                () -> AreaSheet.of(Optional.empty(), Optional.empty(), Optional.empty(), HEIGHT, NO_GLUE, "can"));
    }

    private static Measured from(Provenance provenance) {
        return Measured.exact(Kind.LENGTH, 10e-3, provenance);
    }

    @Test
    void productIsNoBetterKnownThanItsWorstFactor() {
        assertEquals(
                Provenance.GUESSED,
                AreaRoutes.strip(from(Provenance.MEASURED), from(Provenance.GUESSED))
                        .provenance());
        assertEquals(
                Provenance.GUESSED,
                AreaRoutes.strip(from(Provenance.GUESSED), from(Provenance.MEASURED))
                        .provenance());
    }

    @Test
    void exactReadingsGiveAnExactArea() {
        Measured area = AreaRoutes.strip(from(Provenance.MEASURED), from(Provenance.MEASURED));
        assertEquals(Spread.NONE, area.spread());
        assertEquals(Spread.NORMAL, strip(1.540).spread());
    }

    @Test
    void depthFromTheStripIsAsSureAsLengthCountAndFolds() {
        // 5 mm of 1540 mm, 1 of 55, 2 % for the folds
        double relative = Math.sqrt(Math.pow(5.0 / 1540, 2) + Math.pow(1.0 / 55, 2) + 0.02 * 0.02);
        Measured depth = AreaRoutes.depthFromStrip(length(1.540, 5e-3), count(55));
        assertEquals(14e-3 * relative, depth.standardUncertainty(), 1e-9);
    }

    @Test
    void depthFromDiametersIsHalfTheirDifference() {
        Measured depth = AreaRoutes.depthFromDiameters(length(70e-3, 0.3e-3), length(42e-3, 0.4e-3));
        assertEquals(0.25e-3, depth.standardUncertainty(), 1e-12);
        assertThrows(
                IllegalArgumentException.class,
                () -> AreaRoutes.depthFromDiameters(length(42e-3, 0), length(42e-3, 0)));
    }

    @Test
    void differingDepthsAreShownInMillimeters() {
        assertEquals(
                List.of("14 mm", "16.5 mm"),
                AreaSheet.compareDepths(length(14e-3, 0.1e-3), length(16.5e-3, 0.1e-3), "can")
                        .orElseThrow()
                        .values()
                        .stream()
                        .map(Shown::text)
                        .toList());
    }

    @Test
    void readingsDisagreeBeyondTwiceTheirCombinedUncertainty() {
        // 3 and 4 make 5 tenths of a millimeter: 1 mm is just not apart
        assertTrue(AreaSheet.compareDepths(length(14e-3, 0.3e-3), length(14.99e-3, 0.4e-3), "can")
                .isEmpty());
        assertTrue(AreaSheet.compareDepths(length(14e-3, 0.3e-3), length(15.01e-3, 0.4e-3), "can")
                .isPresent());
    }

    @Test
    void statedAreaStandsInWhereNothingElseIsKnown() {
        Measured stated = new Measured(Kind.AREA, 0.09, 0, Spread.NONE, Provenance.PRINTED, 1, "900 cm2");
        AreaSheet sheet = AreaSheet.of(Optional.empty(), Optional.empty(), Optional.of(stated), HEIGHT, NO_GLUE, "can");
        assertEquals(stated, sheet.gross());
        assertEquals("", code(sheet));
        assertEquals(0.09, sheet.effective().value(), 1e-15);
    }

    @Test
    void statedAreaIsComparedWithTheStripWhenThereIsNoCount() {
        Measured stated = new Measured(Kind.AREA, 0.07, 0, Spread.NONE, Provenance.PRINTED, 1, "700 cm2");
        AreaSheet sheet =
                AreaSheet.of(Optional.of(strip(1.540)), Optional.empty(), Optional.of(stated), HEIGHT, NO_GLUE, "can");
        assertEquals("area.statedDisagrees", code(sheet));
    }

    @Test
    void glueIsAsSureAsItsReading() {
        // gross 5 mm of 1540 and 0.5 of 60 mm of 55/60 of 0.0924 m2; glue 0.0924 x 2 x 0.5/60
        AreaSheet sheet = AreaSheet.of(
                Optional.of(strip(1.540)), Optional.empty(), Optional.empty(), HEIGHT, length(2.5e-3, 0.5e-3), "can");
        double gross = 0.0847 * Math.hypot(5.0 / 1540, 0.5 / 60);
        assertEquals(Math.hypot(gross, 0.0924 / 60), sheet.effective().standardUncertainty(), 1e-12);
    }

    @Test
    void glueThatLeavesNothingOpenIsRefused() {
        Measured half = Measured.exact(Kind.LENGTH, 30e-3, Provenance.MEASURED);
        assertThrows(IllegalArgumentException.class, () -> sheet(Optional.empty(), Optional.empty(), half));
        Measured negative = Measured.exact(Kind.LENGTH, -1e-6, Provenance.MEASURED);
        assertThrows(IllegalArgumentException.class, () -> sheet(Optional.empty(), Optional.empty(), negative));
    }

    @Test
    void guessedGlueMakesTheOpenAreaAGuess() {
        Measured guessed = Measured.exact(Kind.LENGTH, 2e-3, Provenance.GUESSED);
        assertEquals(
                Provenance.GUESSED,
                sheet(Optional.empty(), Optional.empty(), guessed).effective().provenance());
        Measured none = Measured.exact(Kind.LENGTH, 0, Provenance.GUESSED);
        assertEquals(
                Provenance.MEASURED,
                sheet(Optional.empty(), Optional.empty(), none).effective().provenance());
    }
}
