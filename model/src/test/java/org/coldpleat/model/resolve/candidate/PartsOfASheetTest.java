package org.coldpleat.model.resolve.candidate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.coldpleat.model.Cases;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.input.Assumption;
import org.junit.jupiter.api.Test;

class PartsOfASheetTest {
    private static final Fluid OIL = new Fluid(0.1, 860);
    private static final double FLOW = 2e-4;

    private static ResolvedCase resolve(String lines) {
        return Cases.resolve(Cases.stand("12 L/min") + """
                candidates:
                  - name: One
                    medium: {family: paper, statedArea: 850 cm2}
                """ + lines.indent(4));
    }

    private static FilterAssembly filter(String lines) {
        return resolve(lines).candidates().get(0).filter();
    }

    private static double part(FilterAssembly filter, FilterPart part) {
        return filter.solve(FLOW, OIL).partDrops().get(part);
    }

    @Test
    void whatIsNotToldIsUsualAndNeverAbsent() {
        ResolvedCase resolved = resolve("");
        FilterAssembly filter = resolved.candidates().get(0).filter();
        for (FilterPart part : FilterPart.values()) {
            assertTrue(part(filter, part) > 0, part.name());
        }
        assertEquals(BypassLocation.DOME, filter.elementValveLocation());
        for (String path : new String[] {
            "basePlate.inletHoles.diameter",
            "antiDrainFlap.openingPressure",
            "element.gapToCan",
            "centerTube.holes.count",
            "centerTube.insideDiameter",
            "basePlate.outletBore.diameter",
            "bypass.openingPressure",
            "pleats.count",
            "medium.thickness"
        }) {
            Optional<Assumption> named = resolved.assumptions().stream()
                    .filter(one -> one.path().equals("candidates[0]." + path))
                    .findFirst();
            assertTrue(named.isPresent(), path);
            assertTrue(resolved.ownUnknowns(0).containsKey("candidates[0]." + path), path);
        }
    }

    @Test
    void whatIsSaidToBeAbsentIsAbsent() {
        FilterAssembly filter = filter(Cases.BARE.indent(-4) + "bypass: {position: none}");
        for (FilterPart part : FilterPart.values()) {
            if (part != FilterPart.PLEAT_PACK) {
                assertEquals(0, part(filter, part), part.name());
            }
        }
        assertEquals(Optional.empty(), filter.elementValve());
    }

    @Test
    void valveOfTheBlockStandsAloneWhereTheSheetTellsOfNone() {
        BypassPlace place = BypassPlace.of(
                resolve("").document().root().sections("candidates").get(0), true);
        assertEquals(BypassLocation.NONE, place.location());
        assertEquals(Optional.of("filter.valveOfBlockAlone"), place.finding());
    }

    /** 14 psi, and 8 and 25 psi at the ends of the band. */
    @Test
    void unknownOpeningPressureIsThatOfSpinOns() {
        for (String words : new String[] {"{position: base}", "{position: base, openingPressure: unknown}"}) {
            ResolvedCase resolved = resolve("bypass: " + words);
            assertEquals(
                    14 * 6894.76,
                    resolved.candidates()
                            .get(0)
                            .filter()
                            .elementValve()
                            .orElseThrow()
                            .openingPressure(),
                    1);
            var unknown = resolved.ownUnknowns(0).get("candidates[0].bypass.openingPressure");
            assertEquals(7.8, unknown.value().low() / 6894.76, 0.1);
            assertEquals(25.2, unknown.value().high() / 6894.76, 0.1);
        }
    }

    @Test
    void sizesFollowWhatTheSheetTells() {
        FilterAssembly can = filter("outside: {diameter: 93 mm, length: 140 mm}");
        FilterAssembly small = filter("outside: {diameter: 66 mm, length: 70 mm}");
        assertTrue(part(can, FilterPart.OUTLET_BORE) < part(small, FilterPart.OUTLET_BORE));
        assertTrue(part(can, FilterPart.INLET_HOLES) < part(small, FilterPart.INLET_HOLES));
        AdditiveLaw thread = filter("basePlate: {thread: M20 x 1.5}").outletBore();
        AdditiveLaw bore =
                filter("basePlate: {outletBore: {diameter: 17.6 mm}}").outletBore();
        assertEquals(bore.laminar(), thread.laminar(), 1e-9 * bore.laminar());
        assertEquals(0.01905, ThreadText.nominal("3/4-16 UNF").orElseThrow(), 1e-15);
        assertEquals(Optional.empty(), ThreadText.nominal("as on the box"));
    }

    @Test
    void familiesInBenchWordsAreTheFamiliesOfTheModel() {
        for (String[] pair :
                new String[][] {{"paper", "cellulose"}, {"synthetic", "glass"}, {"wireBackedSynthetic", "glass"}}) {
            assertEquals(resistance(pair[1]), resistance(pair[0]), pair[0]);
            assertEquals(FamilyWord.capacity(pair[1]), FamilyWord.capacity(pair[0]));
            assertEquals(FamilyWord.halfCaught(pair[1]), FamilyWord.halfCaught(pair[0]));
        }
    }

    private static double resistance(String family) {
        return Cases.resolve(Cases.stand("12 L/min") + """
                        candidates:
                          - name: One
                            medium: {family: %s, statedArea: 850 cm2}
                        """.formatted(family))
                .candidates()
                .get(0)
                .mediumResistance();
    }

    /** The same gross area by strip, count and statement: 1550 mm by 56 mm, 50 pleats of 15.5 mm. */
    @Test
    void sameGrossAreaHasTheSameEffectiveAreaByEveryRoute() {
        String element = "element: {outsideDiameter: 65 mm, insideDiameter: 34 mm, length: 56 mm}\n";
        String pleats = "pleats: {count: 50, height: 56 mm, buriedPerEnd: 2 mm}\n";
        double strip = area(element + pleats, "strip: {length: 1550 mm, width: 56 mm}");
        double count = area(element + pleats, "thickness: 0.62 mm");
        double stated = area(element + pleats.replace("count: 50, ", ""), "statedArea: 868 cm2");
        // a usual seam takes 0.6 % of the length of a count or a statement, the folds 1.84 thicknesses each of any
        double folds = 1.84 * 0.62 * 50 / 1550;
        double seamed = (1 - 0.006 - folds) / (1 - folds);
        assertEquals(strip * seamed, count, 1e-9 * strip);
        // pleats that were not counted are as many as the area needs, the core lets in or so: a tenth of the folds
        assertEquals(strip * seamed, stated, 0.1 * folds * strip);
        assertTrue(strip < 0.868e-1 * 52 / 56);
    }

    private static double area(String lines, String medium) {
        String text = medium.contains("thickness") ? medium : medium + ", thickness: 0.62 mm";
        return Cases.resolve(Cases.stand("12 L/min") + """
                        candidates:
                          - name: One
                            medium: {resistance: 1e8 1/m, %s}
                        """.formatted(text) + lines.indent(4))
                .candidates()
                .get(0)
                .pack()
                .effectiveArea();
    }

    @Test
    void severalPortsAndOwnCoefficientsCount() {
        String valve = "bypass: {position: dome, openingPressure: 80 kPa, portDiameter: 6 mm%s}";
        AdditiveLaw one = port(valve.formatted(""));
        AdditiveLaw four = port(valve.formatted(", portCount: 4"));
        // n equal passages side by side: laminar over n, inertial over n squared
        assertEquals(one.laminar() / 4, four.laminar(), 1e-12 * one.laminar());
        assertEquals(one.inertial() / 16, four.inertial(), 1e-12 * one.inertial());
        AdditiveLaw own = port(valve.formatted(", portDischargeCoefficient: 0.8"));
        assertEquals(one.inertial() * 0.61 * 0.61 / 0.64, own.inertial(), 1e-9 * one.inertial());
        String bore = "basePlate: {outletBore: {diameter: 17 mm, length: 16 mm%s}}";
        double plain = filter(bore.formatted("")).outletBore().inertial();
        double rounded = filter(bore.formatted(", dischargeCoefficient: 0.9"))
                .outletBore()
                .inertial();
        assertEquals(plain / 1.5 / 0.81, rounded, 1e-9 * plain);
        double middle = filter("element: {outsideDiameter: 65 mm}").annulusResistance();
        double off =
                filter("element: {outsideDiameter: 65 mm, eccentricity: 100 %}").annulusResistance();
        assertEquals(middle / 2.5, off, 1e-12 * middle);
    }

    /** Readings made from a law give the law back: 2e7 1/m3 and 1e8 1/m4 with oil of 100 mm2/s and 860 kg/m3. */
    @Test
    void measuredCurveTakesThePlaceOfThePart() {
        StringBuilder points = new StringBuilder();
        for (double flow : new double[] {5, 10, 20}) {
            double q = flow / 6e4;
            points.append(String.format(
                    Locale.ROOT, "{flow: %s L/min, pressure: %.9f Pa}, ", flow, 0.086 * 2e7 * q + 860 * 1e8 * q * q));
        }
        ResolvedCase resolved = resolve("partCurves: {outletBore: {viscosity: 100 cSt, density: 860 kg/m3, points: ["
                + points.substring(0, points.length() - 2) + "]}}");
        AdditiveLaw law = resolved.candidates().get(0).filter().outletBore();
        assertEquals(2e7, law.laminar(), 1e-3 * 2e7);
        assertEquals(1e8, law.inertial(), 1e-3 * 1e8);
        assertEquals(
                0.05,
                resolved.ownUnknowns(0)
                        .get("candidates[0].partCurves.outletBore.fit")
                        .value()
                        .halfWidth(),
                1e-6);
        assertTrue(resolved.assumptions().stream().noneMatch(one -> one.path().contains("outletBore")));
    }

    private static AdditiveLaw port(String line) {
        return filter(line).elementValve().orElseThrow().port();
    }
}
