package org.coldpleat.model.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.coldpleat.model.Cases;
import org.coldpleat.model.certainty.OpeningBand;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.Verdict;
import org.junit.jupiter.api.Test;

/** Whole cases on a flow stand against sums done by hand. */
class FlowStandCaseTest {
    private static final double GALLON_PER_MINUTE = 3.785411784e-3 / 60;
    private static final double PSI = 6894.757293168361;
    private static final double AREA = 2 * 55 * 0.014 * 0.060;
    private static final double RESISTANCE = 0.0008 / 2.2e-11;

    @Test
    void mediumAloneOpensAtTheViscosityOfTheHandCalculation() {
        ResolvedCase resolved =
                Cases.resolve(Cases.stand("5 gpm") + "candidates:\n" + Cases.mediumOnly("Plain", "12 psi"));
        StateResult result =
                Simulation.compare(resolved).now().candidates().get(0).states().get(0);
        double opening = result.openingTemperature().orElseThrow().value();
        double viscosity = Simulation.point(resolved, "Plain", "stand", opening)
                .now()
                .oil()
                .dynamicViscosity();
        // dp = mu Q R / A at 12 psi; published nowhere, plain Darcy arithmetic
        assertEquals(12 * PSI * AREA / (5 * GALLON_PER_MINUTE * RESISTANCE), viscosity, 1e-4 * viscosity);
        assertEquals(0.6665, viscosity, 0.005 * 0.6665);
        assertTrue(result.openingTemperature().orElseThrow().low() < opening - 1);
        assertTrue(result.openingTemperature().orElseThrow().high() > opening + 1);
    }

    @Test
    void pressureDropOfTheMediumAgreesWithDarcy() {
        ResolvedCase resolved =
                Cases.resolve(Cases.stand("5 gpm") + "candidates:\n" + Cases.mediumOnly("Plain", "30 psi"));
        PointResult point =
                Simulation.pointAtFlow(resolved, "Plain", 2e-4, 303.15).now();
        double expected = point.oil().dynamicViscosity() * 2e-4 * RESISTANCE / AREA;
        assertEquals(expected, point.pressureDrop(), 1e-3 * expected);
        assertEquals(expected, point.elementPressureDrop(), 1e-3 * expected);
        assertTrue(point.flowResidual() < 1e-9);
        assertTrue(point.pressureResidual() < 1e-9);
    }

    @Test
    void pressureRangeOnABoxMovesTheOpeningAndShowsIt() {
        String flow = "19.1 gpm";
        double low = opening(flow, "16 psi");
        double middle = opening(flow, "16 to 22 psi");
        double high = opening(flow, "22 psi");
        assertEquals(273.15, middle, 3);
        // half the range over the slope of the oil, 0.065 per kelvin near 0 C
        assertEquals(2.4, (low - high) / 2, 0.2);
        ResolvedCase resolved =
                Cases.resolve(Cases.stand(flow) + "candidates:\n" + Cases.mediumOnly("Range", "16 to 22 psi"));
        OpeningBand band = Simulation.compare(resolved)
                .now()
                .candidates()
                .get(0)
                .states()
                .get(0)
                .openingTemperature()
                .orElseThrow();
        assertTrue(band.halfWidth() > 2.4);
    }

    private static double opening(String flow, String pressure) {
        ResolvedCase resolved = Cases.resolve(Cases.stand(flow) + "candidates:\n" + Cases.mediumOnly("One", pressure));
        return Simulation.compare(resolved)
                .now()
                .candidates()
                .get(0)
                .states()
                .get(0)
                .openingTemperature()
                .orElseThrow()
                .value();
    }

    @Test
    void areasAreSeparatedOnlyBeyondTheirBands() {
        assertEquals(List.of("area.notSeparated"), areaVerdicts("924 cm2 ± 38 cm2", "960 cm2 ± 39 cm2"));
        assertEquals(List.of("area.larger"), areaVerdicts("924 cm2 ± 8 cm2", "960 cm2 ± 9 cm2"));
    }

    private static List<String> areaVerdicts(String first, String second) {
        String candidate = """
                  - name: %s
                    bypass: {position: dome, openingPressure: 12 psi}
                    medium: {statedArea: %s, resistance: 3.6e7 1/m}
                """ + Cases.BARE;
        ResolvedCase resolved = Cases.resolve(Cases.stand("2 gpm") + "candidates:\n" + candidate.formatted("A", first)
                + candidate.formatted("B", second));
        return Simulation.compare(resolved).now().verdicts().stream()
                .map(Verdict::code)
                .filter(code -> code.startsWith("area."))
                .toList();
    }

    @Test
    void areaComesFromEitherRouteAndBuriedEdgesAreTakenOffOnce() {
        String candidate = """
                candidates:
                  - name: Sheet
                    bypass: {position: dome, openingPressure: 12 psi}
                    pleats: {count: 55, depth: 14 mm, height: 60 mm%s}
                    medium: {resistance: 3.6e7 1/m%s}
                """;
        // a usual seam takes 0.6 % of the 1540 mm of legs, the folds 1.84 thicknesses of 0.65 mm each
        double seam = 1 - 0.006;
        double folds = 1 - 1.84 * 0.65 * 55 / (1540 * seam);
        assertEquals(
                0.0924 * seam, area(candidate.formatted("", "")).grossArea().value(), 1e-9);
        assertEquals(
                0.0847 * seam * folds,
                area(candidate.formatted(", buriedPerEnd: 2.5 mm", ""))
                        .effectiveArea()
                        .value(),
                1e-9);
        String strip = ", strip: {length: 1540 mm, width: 60 mm}";
        ResolvedCase agreeing = Cases.resolve(Cases.stand("2 gpm") + candidate.formatted("", strip));
        assertEquals(
                0.0924,
                Simulation.compare(agreeing)
                        .now()
                        .candidates()
                        .get(0)
                        .sheet()
                        .grossArea()
                        .value(),
                1e-9);
        assertTrue(noticeCodes(agreeing).stream().noneMatch(code -> code.startsWith("area.")));
        ResolvedCase half = Cases.resolve(Cases.stand("2 gpm") + candidate.formatted("", ", statedArea: 71.6 in2"));
        assertTrue(noticeCodes(half).contains("area.factorTwo"));
    }

    private static CandidateSheet area(String candidates) {
        return Simulation.compare(Cases.resolve(Cases.stand("2 gpm") + candidates))
                .now()
                .candidates()
                .get(0)
                .sheet();
    }

    private static List<String> noticeCodes(ResolvedCase resolved) {
        return Simulation.compare(resolved).now().notices().stream()
                .map(notice -> notice.code())
                .toList();
    }

    @Test
    void airPermeabilityGivesTheDarcyPermeability() {
        ResolvedCase resolved = Cases.resolve(Cases.stand("2 gpm") + """
                        candidates:
                          - name: Air
                            bypass: {position: dome, openingPressure: 12 psi}
                            medium: {statedArea: 900 cm2, thickness: 0.8 mm, airTest: {pressure: 0.5 inH2O, velocity: 10 cfm/ft2}}
                        """);
        CandidateSheet sheet =
                Simulation.compare(resolved).now().candidates().get(0).sheet();
        // 0.0008 m x 1.82e-5 Pa s x 0.0508 m/s / 124.5 Pa; air at 20 C is 0.4 % thinner, inertia takes off 0.2 %
        assertEquals(5.94e-12, sheet.permeability().orElseThrow(), 0.01 * 5.94e-12);
    }

    @Test
    void coldViscosityOfADataSheetOilCarriesABand() {
        ResolvedCase resolved =
                Cases.resolve(Cases.stand("2 gpm") + "candidates:\n" + Cases.mediumOnly("Plain", "12 psi"));
        PointResult point =
                Simulation.pointAtFlow(resolved, "Plain", 1e-4, 233.15).now();
        assertEquals(10.156, point.oil().dynamicViscosity(), 0.005 * 10.156);
        double lnSigma = resolved.shared().oil().oil().viscositySpread(233.15);
        double factor = Math.exp(1.96 * lnSigma);
        assertTrue(9.2 > point.oil().dynamicViscosity() / factor);
        assertTrue(point.notices().stream().anyMatch(notice -> notice.code().equals("oil.extrapolated")));
    }

    @Test
    void orderOfCandidatesChangesNoNumberAndTwinsAgree() {
        String a = Cases.mediumOnly("A", "12 psi");
        String b = Cases.mediumOnly("B", "16 to 22 psi");
        String twin = Cases.mediumOnly("Twin", "12 psi");
        Comparison first = Simulation.compare(Cases.resolve(Cases.stand("2 gpm") + "candidates:\n" + a + b + twin))
                .now();
        Comparison second = Simulation.compare(Cases.resolve(Cases.stand("2 gpm") + "candidates:\n" + twin + b + a))
                .now();
        assertSame(first.candidates().get(0), second.candidates().get(2));
        assertSame(first.candidates().get(1), second.candidates().get(1));
        assertSame(first.candidates().get(0), first.candidates().get(2));
    }

    private static void assertSame(CandidateResult one, CandidateResult other) {
        assertEquals(one.sheet(), other.sheet());
        for (int i = 0; i < one.states().size(); i++) {
            StateResult left = one.states().get(i);
            StateResult right = other.states().get(i);
            assertEquals(left.openingTemperature(), right.openingTemperature());
            assertEquals(left.shares(), right.shares());
            assertEquals(left.greatestRatio(), right.greatestRatio());
            assertEquals(left.chanceOpen(), right.chanceOpen());
        }
    }
}
