package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.loading.CaptureFamily;
import org.coldpleat.model.loading.RatingPair;
import org.coldpleat.model.resolve.Resolution;
import org.coldpleat.model.run.Simulation;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.casefile.reading.CaseReader;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Readings that teardown benches of small spin-on filters commonly report hang together when put through the whole
 * program. All readings: common practice, no source.
 */
class CommonPracticeSheetsTest {
    private static final String SOURCE = "derived here";

    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    private static Comparison compare(String candidate) {
        String text = """
                formatVersion: 1
                title: Common readings
                oil:
                  name: Oil
                  points:
                    - {temperature: 40 °C, kinematic: 63.2 cSt}
                    - {temperature: 100 °C, kinematic: 10.1 cSt}
                  density: 859 kg/m3
                flowStand:
                  states:
                    - {name: hot test, flow: 3 gpm}
                temperatures:
                  named:
                    - {name: hot, temperature: 93 °C}
                candidates:
                """ + candidate;
        Resolution resolution = Simulation.resolve(
                CaseReader.read("common.yaml", text).document().orElseThrow());
        return Simulation.compare(resolution.resolved().orElseThrow()).now();
    }

    private static String sheet(int pleats, String length, String width, String thickness, String opening) {
        return """
                  - name: Reading
                    bypass: {position: dome, openingPressure: %s}
                    pleats: {count: %d, height: %s}
                    element: {outsideDiameter: 66 mm, insideDiameter: 36 mm, length: 60 mm}
                    medium:
                      family: cellulose
                      strip: {length: %s, width: %s}
                      thickness: %s
                """.formatted(opening, pleats, width, length, width, thickness);
    }

    @ParameterizedTest
    @CsvSource({
        "42, 46 in, 1.35 in, 0.76 mm, 8 psi, 46, 1.35",
        "42, 50 in, 2.2 in, 1.14 mm, 12 to 15 psi, 50, 2.2",
        "48, 46 in, 2.2 in, 0.76 mm, 12 to 15 psi, 46, 2.2",
        "48, 50 in, 1.35 in, 1.14 mm, 8 psi, 50, 1.35"
    })
    void geometryFromCommonReadingsLandsInTheUsualRanges(
            int pleats, String length, String width, String thickness, String opening, double inches, double wide) {
        Comparison comparison = compare(sheet(pleats, length, width, thickness, opening));
        CandidateSheet sheet = comparison.candidates().get(0).sheet();
        check("gross area from strip length and width")
                .at(length + " x " + width)
                .expected(inches * wide * SQUARE_INCH, "m2")
                .computed(sheet.grossArea().value())
                .within(1e-9, "arithmetic");
        // medium areas of small spin-on filters, 400 to 1000 cm2: common practice, no source
        usual("gross medium area of small spin-on filters")
                .at(length + " x " + width)
                .computed(sheet.grossArea().value(), "m2")
                .between(0.040, 0.1, "usual range of the trade, 400 to 1000 cm2");
        double depth = inches * 0.0254 / (2 * pleats);
        // pleats 8 to 20 mm deep: common practice, no source
        usual("pleat depth from strip length and count")
                .at(pleats + " pleats, " + length)
                .computed(depth, "m")
                .between(0.008, 0.020, "usual range of the trade");
        assertEquals(0, sheet.crowdedShare());
        assertTrue(sheet.channelFactor().value() >= 1);
        // clean hot drop of a spin-on below 35 kPa at rated flow: common practice, no source
        usual("clean hot pressure drop at rated flow")
                .at(length + " x " + width)
                .computed(sheet.hotPressureDrop().value(), "Pa")
                .below(35e3, "usual limit of the trade");
        StateResult state = comparison.candidates().get(0).states().get(0);
        assertEquals(0, state.shares().get(0).share().value());
    }

    @ParameterizedTest
    @CsvSource({"7.0 g, 46 in, 1.35 in", "8.6 g, 50 in, 2.2 in", "11.5 g, 46 in, 2.2 in"})
    void basisWeightFromStripMassAndSizeLiesBetweenOneHundredAndTwoHundredGrams(
            String mass, String length, String width) {
        String candidate = """
                  - name: Reading
                    bypass: {position: dome, openingPressure: 8 psi}
                    medium:
                      family: cellulose
                      strip: {length: %1$s, width: %2$s}
                      thickness: 0.9 mm
                      mass: %3$s
                """.formatted(length, width, mass);
        double basisWeight =
                compare(candidate).candidates().get(0).sheet().basisWeight().orElseThrow();
        usual("basis weight from strip mass and size")
                .at(mass + ", " + length + " x " + width)
                .computed(basisWeight, "kg/m2")
                .between(0.100, 0.200, "usual range of the trade");
    }

    @Test
    void nominalAndAbsoluteSizesMakeACaptureCurve() {
        RatingPair nominal = new RatingPair(23e-6, 0.50);
        RatingPair absolute = new RatingPair(45e-6, 1 - 1 / 75.0);
        for (CaptureFamily family : CaptureFamily.values()) {
            double at23 = family.through(nominal, absolute).efficiency(23e-6);
            double at45 = family.through(nominal, absolute).efficiency(45e-6);
            check("efficiency at the nominal size")
                    .at(family.toString())
                    .expected(0.50, "1")
                    .computed(at23)
                    .within(1e-9, "arithmetic");
            check("efficiency at the absolute size")
                    .at(family.toString())
                    .expected(1 - 1 / 75.0, "1")
                    .computed(at45)
                    .within(1e-9, "arithmetic");
            assertTrue(family.through(nominal, absolute).efficiency(30e-6) > 0.7);
        }
    }

    private static ExternalCheck usual(String quantity) {
        return ExternalCheck.of(Topic.WHOLE, quantity, "common practice, no source");
    }

    @Test
    void singleRatingFixesItsOwnPointOnly() {
        RatingPair single = new RatingPair(20e-6, 0.965);
        for (double spread : new double[] {1.3, 1.5, 1.8}) {
            check("efficiency at a single rating")
                    .at("spread " + spread)
                    .expected(0.965, "1")
                    .computed(CaptureFamily.LOG_NORMAL.through(single, spread).efficiency(20e-6))
                    .within(1e-9, "arithmetic");
        }
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.WHOLE, quantity, SOURCE);
    }
}
