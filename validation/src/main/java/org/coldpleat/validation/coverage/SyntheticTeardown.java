package org.coldpleat.validation.coverage;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.coldpleat.model.evidence.AirTestEvidence;
import org.coldpleat.model.evidence.StructureEvidence;
import org.coldpleat.model.medium.FiberFamily;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/**
 * One invented teardown of two filters on one engine and one flow stand: a case with the true values, and the same case as
 * it would be written down after reading them with the errors that the sheet states or that are usual.
 *
 * @param truth case text with the true values
 * @param moved what no sheet states, as drawn for the truth: path to value [SI]
 * @param readings case text as read
 * @param evidence what the resistance of each medium rests on
 */
record SyntheticTeardown(String truth, Map<String, Double> moved, String readings, String[] evidence) {
    private static final double AIR_VISCOSITY = 1.813e-5;
    private static final String[] MIXES = {"stated", "air", "structure", "air+structure", "stated+air", "family"};

    /** Teardown of a number; the same number gives the same teardown. */
    static SyntheticTeardown of(long number) {
        SplittableRandom world = new SplittableRandom(7919 * number + 17);
        double[] shared = numbers(world, 16);
        double[][] own = {numbers(world, 24), numbers(world, 24)};
        Map<String, Double> moved = new HashMap<>();
        moved.put("oil.coldCurve", world.nextGaussian());
        String[] evidence = new String[2];
        double[] resistance = new double[2];
        for (int i = 0; i < 2; i++) {
            evidence[i] = MIXES[world.nextInt(MIXES.length)];
            resistance[i] = resistance(own[i], evidence[i], world.nextGaussian());
            String path = "candidates[" + i + "].";
            moved.put(path + "medium.combinedResistance", resistance[i]);
            moved.put(path + "pleat.slipCoefficient", Math.exp(0.5 * world.nextGaussian()));
            moved.put(path + "pleat.inPlaneRatio", 1 + 0.8 * Math.abs(world.nextGaussian()));
            moved.put(path + "pleat.gapFactor", 1 + 0.058 * world.nextGaussian());
            moved.put(path + "valve.flowForceFactor", 0.1 * Math.abs(world.nextGaussian()));
        }
        long seed = world.nextLong();
        return new SyntheticTeardown(
                text(new Bench(new SplittableRandom(seed), true), shared, own, evidence, resistance),
                Map.copyOf(moved),
                text(new Bench(new SplittableRandom(seed), false), shared, own, evidence, resistance),
                evidence);
    }

    private static double[] numbers(SplittableRandom random, int count) {
        return random.doubles(count).toArray();
    }

    private static double between(double share, double low, double high) {
        return low + share * (high - low);
    }

    private static double log(double share, double low, double high) {
        return low * Math.pow(high / low, share);
    }

    private static double thickness(double[] n) {
        return between(n[0], 0.45e-3, 0.85e-3);
    }

    private static double basisWeight(double[] n) {
        return between(n[1], 0.1, 0.2);
    }

    private static double fiberDiameter(double[] n) {
        return log(n[2], 8e-6, 18e-6);
    }

    /** From the family where nothing else is known, else from the structure with the error of its laws. */
    private static double resistance(double[] n, String evidence, double score) {
        if (evidence.equals("family")) {
            Measured typical = FiberFamily.BLEND.typical().resistance();
            return typical.value() * Math.exp(typical.halfWidth() * score);
        }
        double law = StructureEvidence.ofSheet(
                        "",
                        Measured.exact(Kind.BASIS_WEIGHT, basisWeight(n), Provenance.MEASURED),
                        Measured.exact(Kind.DENSITY, 1500, Provenance.MEASURED),
                        Measured.exact(Kind.LENGTH, fiberDiameter(n), Provenance.MEASURED),
                        Measured.exact(Kind.LENGTH, thickness(n), Provenance.MEASURED))
                .median();
        return law * Math.exp(StructureEvidence.LAW_LN_SIGMA * score);
    }

    private static String text(Bench bench, double[] n, double[][] own, String[] evidence, double[] resistance) {
        double pump = between(n[0], 4, 12);
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                """
                formatVersion: 1
                title: Synthetic teardown
                invented: true
                oil:
                  points:
                    - {temperature: 40 °C, kinematic: %.4f cSt}
                    - {temperature: 100 °C, kinematic: %.4f cSt}
                  density: 862 kg/m3
                flowStand:
                  states:
                    - {name: stand, flow: %.4f L/min}
                engine:
                  pump: {displacement: %s, slip: %s}
                  reliefValves:
                    - {name: relief, senses: outlet, openingPressure: %s, override: %s}
                  gallery:
                    hotReading:
                      pressure: %s
                      temperature: %s
                      speed: 3000 rpm
                      bearingShare: %s
                      jetBore: %s
                      jetLength: %s
                  states:
                    - {name: idle, speed: %.1f rpm}
                temperatures:
                  from: -40 °C
                  to: 130 °C
                  named:
                    - {name: frost, temperature: -10 °C}
                    - {name: warm, temperature: 90 °C}
                candidates:
                """,
                log(n[1], 40, 130),
                log(n[1], 8, 15),
                0.9 * pump,
                bench.usual(pump, 0.03, "cm3/rev"),
                bench.usual(between(n[2], 1e-12, 4e-12), 0.5, "m3"),
                bench.usual(between(n[3], 400, 600), 0.08, "kPa"),
                bench.usual(log(n[4], 1e8, 4e8), 0.4, "Pa s/m3"),
                bench.usual(between(n[5], 160, 300), 0.08, "kPa"),
                bench.usualWithin(90, 4, "°C"),
                bench.within(between(n[6], 0.3, 0.7), 0.1, "")
                        .replace(" ±", "±")
                        .strip(),
                bench.usualWithin(1.5, 0.2, "mm"),
                bench.usualWithin(4, 1, "mm"),
                between(n[7], 900, 1500)));
        for (int i = 0; i < 2; i++) {
            candidate(text, i == 0 ? "First" : "Second", bench, own[i], evidence[i], resistance[i]);
        }
        return text.toString();
    }

    private static void candidate(
            StringBuilder text, String name, Bench bench, double[] n, String evidence, double resistance) {
        double outer = between(n[3], 60, 76);
        double inner = between(n[4], 30, 38);
        double height = between(n[5], 28, 70);
        int count = (int) Math.round(between(n[6], 32, 52) * outer / 68);
        double depth = (outer - inner) / 2;
        double length = 2 * depth * count;
        String opening = n[7] < 0.5
                ? bench.usual(between(n[8], 50, 120), 0.15, "kPa")
                : bench.repeated(between(n[8], 50, 120), 4, 4, "kPa");
        text.append(String.format(
                Locale.ROOT,
                """
                  - name: %s
                    outside: {present: false}
                    basePlate: {inletHoles: {present: false}, outletBore: {present: false}}
                    antiDrainFlap: {present: false}
                    bypass: {position: dome, openingPressure: %s, seatDiameter: %s, springRate: %s, maximumLift: %s}
                    centerTube: {insideDiameter: %s, wallThickness: 0.4 mm, length: %s, holes: {count: 50, diameter: 4 mm}}
                    element: {outsideDiameter: %s, insideDiameter: %s, length: %s}
                    pleats: {count: %s, height: %s, buriedPerEnd: %s}
                    medium:
                      family: blend
                      strip: {length: %s, width: %s}
                      thickness: %s
                """,
                name,
                opening,
                bench.usualWithin(15, 0.3, "mm"),
                bench.usual(between(n[9], 1.2, 2.2), 0.1, "N/mm"),
                bench.usualWithin(3, 0.3, "mm"),
                bench.usualWithin(inner - 3, 0.3, "mm"),
                bench.usualWithin(height, 1, "mm"),
                bench.usualWithin(outer, 0.5, "mm"),
                bench.usualWithin(inner, 0.5, "mm"),
                bench.usualWithin(height + 3, 1, "mm"),
                bench.counted(count),
                bench.usualWithin(height, 0.5, "mm"),
                bench.usualWithin(2, 1, "mm"),
                bench.usualWithin(length, 5, "mm"),
                bench.usualWithin(height, 0.5, "mm"),
                bench.repeated(1e3 * thickness(n), 0.02, 5, "mm")));
        if (evidence.contains("stated")) {
            text.append("      resistance: ")
                    .append(bench.usualFactor(resistance, 0.1, "1/m"))
                    .append('\n');
        }
        if (evidence.contains("air")) {
            // the error of carrying air over to oil: four rectangles, near enough to a normal distribution
            double score = Math.sqrt(3) * (n[10] + n[11] + n[12] + n[13] - 2);
            double seen = resistance * Math.exp(AirTestEvidence.TRANSFER_LN_SIGMA * score);
            double velocity = 200 / (AIR_VISCOSITY * seen);
            text.append("      airTest: {pressure: ")
                    .append(bench.usual(200, 0.03, "Pa"))
                    .append(", velocity: ")
                    .append(bench.usual(velocity, 0.1, "m/s"))
                    .append("}\n");
        }
        if (evidence.contains("structure")) {
            text.append("      basisWeight: ")
                    .append(bench.usual(1e3 * basisWeight(n), 0.05, "g/m2"))
                    .append("\n      fiberDensity: ")
                    .append(bench.usual(1500, 0.05, "kg/m3"))
                    .append("\n      fiberDiameter: ")
                    .append(bench.usual(1e6 * fiberDiameter(n), 0.25, "µm"))
                    .append('\n');
        }
    }
}
