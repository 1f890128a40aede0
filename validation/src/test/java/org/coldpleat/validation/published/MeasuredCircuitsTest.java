package org.coldpleat.validation.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.OperatingPoint;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.validation.benchmark.InventedOil;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** The engine circuit against pressures logged on running engines. */
class MeasuredCircuitsTest {
    private static final String RAILWAY = "12-cylinder railway diesel in service, Dai et al. 2024, public data set";

    private static final String AIR_COOLED = "air-cooled flat-four aircraft engine, NGAFID flight logs, binned";

    private static final double ZERO = 273.15;

    /** SAE 40 railway oil, assumed: 145 and 15 mm2/s at 40 and 100 C (common practice, no source). */
    private static final InventedOil RAILWAY_OIL = new InventedOil(145, 15);

    /** Head that the outlet and inlet gauges show at rest [kPa], means of the ten samples at standstill. */
    private static final double REST_DROP = 15;

    private static final double REST_INLET = 3;

    /**
     * Laminar and inertial terms of cooler with filter and of the engine, fitted to every second sample, predict the others
     * through the solver. Single samples scatter by 5 % in drop and 3 % in inlet pressure around any smooth law of speed and
     * temperature (regression of their logarithms), so 12 % is two standard deviations for the ratio, and as much is allowed
     * for the pressure; one sample in ten may lie outside.
     */
    @Test
    void twoTermCircuitPredictsUnseenRailwaySamples() throws IOException {
        List<Sample> samples = railway();
        EngineCircuit circuit = fitted(samples, 0);
        int tested = 0;
        int ratioMet = 0;
        int inletMet = 0;
        for (int i = 1; i < samples.size(); i += 2) {
            Sample sample = samples.get(i);
            OperatingPoint point = circuit.solve(sample.revolutions(), sample.temperature());
            double ratio = point.filterDrop() / point.galleryPressure();
            tested++;
            ratioMet += Math.abs(ratio / sample.ratio() - 1) < 0.12 ? 1 : 0;
            inletMet += Math.abs(point.galleryPressure() / 1e3 / sample.inlet() - 1) < 0.12 ? 1 : 0;
        }
        assertTrue(tested > 30);
        String reason = "12 % is two standard deviations of single samples: one in ten may lie outside";
        check("share of unseen railway samples whose inlet pressure is met within 12 %", RAILWAY)
                .computed((double) inletMet / tested, "1")
                .atLeast(0.9, reason);
        check("share of unseen railway samples whose ratio of filter drop to inlet is met within 12 %", RAILWAY)
                .computed((double) ratioMet / tested, "1")
                .atLeast(0.9, reason);
    }

    /** Bin means: 0.268 and 263 kPa at 400 rpm, 60 C; 0.248 and 677 kPa at 1000 rpm, 68.2 C; 5 % and 12 % as above. */
    @Test
    void ratioHardlyMovesFromIdleToFullSpeed() throws IOException {
        EngineCircuit circuit = fitted(railway(), 0);
        OperatingPoint idle = circuit.solve(400.0 / 60, ZERO + 60);
        OperatingPoint full = circuit.solve(1000.0 / 60, ZERO + 68.2);
        check("filter drop over gallery pressure at 400 rpm, fitted circuit", RAILWAY)
                .expected(0.268, "1")
                .computed(idle.filterDrop() / idle.galleryPressure())
                .withinRelative(0.05, "scatter of single samples in drop");
        check("filter drop over gallery pressure at 1000 rpm, fitted circuit", RAILWAY)
                .expected(0.248, "1")
                .computed(full.filterDrop() / full.galleryPressure())
                .withinRelative(0.05, "scatter of single samples in drop");
        check("gallery pressure at 400 rpm, fitted circuit", RAILWAY)
                .expected(263e3, "Pa")
                .computed(idle.galleryPressure())
                .withinRelative(0.12, "two standard deviations of single samples");
        check("gallery pressure at 1000 rpm, fitted circuit", RAILWAY)
                .expected(677e3, "Pa")
                .computed(full.galleryPressure())
                .withinRelative(0.12, "two standard deviations of single samples");
    }

    /**
     * Warming from 47 to 66 C at 400 rpm: measured ratio falls by a tenth; the regression of the logarithms over the 42
     * samples near 400 rpm gives 1.52 +- 0.03 for the inlet pressure and 1.67 +- 0.03 for the drop. The circuit says 2.0 and
     * 2.1, a known miss: film temperature, slip and the assumed grade are not known.
     */
    @Test
    void ratioFallsSlightlyWhileTheOilWarms() throws IOException {
        EngineCircuit circuit = fitted(railway(), 0);
        OperatingPoint cool = circuit.solve(400.0 / 60, ZERO + 47);
        OperatingPoint warm = circuit.solve(400.0 / 60, ZERO + 66);
        double change = warm.filterDrop() / warm.galleryPressure() / (cool.filterDrop() / cool.galleryPressure());
        check("change of drop over gallery pressure from 47 to 66 °C", RAILWAY)
                .computed(change, "1")
                .between(0.85, 1, "measured: falls by a tenth; film temperature, slip and grade are not known");
        double inlet = cool.galleryPressure() / warm.galleryPressure();
        double drop = cool.filterDrop() / warm.filterDrop();
        String reason = "falls more than measured: film temperature, slip and the assumed grade are not known";
        assertTrue(inlet > 1.3 && inlet < 2.2, () -> "gallery pressure falls by " + inlet);
        check("fold by which the gallery pressure falls from 47 to 66 °C", RAILWAY)
                .expected(1.52, "1")
                .computed(inlet)
                .knownMiss(0.31, 0.04, reason);
        assertTrue(drop > 1.3 && drop < 2.2, () -> "filter drop falls by " + drop);
        check("fold by which the filter drop falls from 47 to 66 °C", RAILWAY)
                .expected(1.67, "1")
                .computed(drop)
                .knownMiss(0.24, 0.04, reason);
    }

    /**
     * Relief with linear override, setting and override fitted to 367 and 501 kPa at 700 and 2450 rpm (62.5 C): an ideal
     * relief would show the same pressure at both. In between it predicts 407 and 482 kPa within 5 %, three spreads of a bin.
     */
    @Test
    void overrideFittedAtTwoSpeedsPredictsTheSpeedsBetween() throws IOException {
        double slow = airCooled(650, 60);
        double fast = airCooled(2350, 60);
        assertEquals(0.37, fast / slow - 1, 0.10);
        EngineCircuit circuit = reliefControlled(slow, fast);
        check("gallery pressure at 700 rpm, relief fitted there", AIR_COOLED)
                .toleranceSetAfterwards()
                .expected(slow, "Pa")
                .computed(circuit.solve(700.0 / 60, ZERO + 62.5).galleryPressure())
                .withinRelative(2e-3, "fitted to this point");
        double idle = airCooled(1000, 60);
        check("gallery pressure at 1050 rpm, relief fitted at 700 and 2450 rpm", AIR_COOLED)
                .expected(idle, "Pa")
                .computed(circuit.solve(1050.0 / 60, ZERO + 62.5).galleryPressure())
                .withinRelative(0.05, "three spreads of a bin");
        double cruise = airCooled(1900, 60);
        check("gallery pressure at 2000 rpm, relief fitted at 700 and 2450 rpm", AIR_COOLED)
                .expected(cruise, "Pa")
                .computed(circuit.solve(2000.0 / 60, ZERO + 62.5).galleryPressure())
                .withinRelative(0.05, "three spreads of a bin");
    }

    /** The same circuit at 1050 rpm from 17.5 to 77.5 C: measured 445 to 394 kPa, 11 % down. Band 5-20 %: gallery and oil
     * grade are assumed. */
    @Test
    void reliefHidesTheViscosityFromTheGauge() throws IOException {
        double measured = 1 - airCooled(1000, 75) / airCooled(1000, 15);
        assertEquals(0.11, measured, 0.01);
        EngineCircuit circuit = reliefControlled(airCooled(650, 60), airCooled(2350, 60));
        double cold = circuit.solve(1050.0 / 60, ZERO + 17.5).galleryPressure();
        double warm = circuit.solve(1050.0 / 60, ZERO + 77.5).galleryPressure();
        double fall = 1 - warm / cold;
        check("fall of the gallery pressure under a relief from 17.5 to 77.5 °C", AIR_COOLED)
                .computed(fall, "1")
                .between(0.05, 0.20, "measured 11 %; gallery and oil grade are assumed");
    }

    /** Invented engine around the measured relief: pump 12 cm3/rev, filter, bearings and jets that take a third of it hot. */
    private static EngineCircuit reliefControlled(double slow, double fast) {
        InventedOil oil = new InventedOil(140, 14.5);
        Gallery gallery = new Gallery(
                0,
                Bearings.isothermal(1 / 4e11),
                List.of(new Restrictor(Openings.hole(1.5e-3, 3e-3, Openings.SHARP_EDGE), 1, 0)));
        Pump pump = Pump.unlimited(12e-6, 1e-12);
        double slowFlow = dumped(pump, gallery, oil, 700.0 / 60, slow);
        double fastFlow = dumped(pump, gallery, oil, 2450.0 / 60, fast);
        double override = (fast - slow) / (fastFlow - slowFlow);
        double setting = slow - override * slowFlow;
        return new EngineCircuit(
                pump,
                List.of(Relief.linear(Relief.Sensing.GALLERY, setting, override)),
                AdditiveLaw.laminarOnly(3e8),
                gallery,
                oil);
    }

    /** Oil that a relief must dump so that the gallery shows a pressure [m3/s]; a stiff relief at that pressure tells. */
    private static double dumped(Pump pump, Gallery gallery, InventedOil oil, double speed, double pressure) {
        return new EngineCircuit(
                        pump,
                        List.of(Relief.ideal(Relief.Sensing.GALLERY, pressure)),
                        AdditiveLaw.laminarOnly(3e8),
                        gallery,
                        oil)
                .solve(speed, ZERO + 62.5)
                .reliefFlow();
    }

    /** Two-term circuit from every second sample, starting with the one at an index. The pump's size only scales the flow. */
    private static EngineCircuit fitted(List<Sample> samples, int first) {
        double perRevolution = 1e-3;
        AdditiveLaw series = fit(samples, first, perRevolution, true);
        AdditiveLaw engine = fit(samples, first, perRevolution, false);
        return new EngineCircuit(
                Pump.unlimited(perRevolution, 0),
                List.of(),
                series,
                new Gallery(0, Bearings.NONE, List.of(new Restrictor(engine, 1, 0))),
                RAILWAY_OIL);
    }

    /** Least squares of relative misses of a mu Q + b rho Q^2. */
    private static AdditiveLaw fit(List<Sample> samples, int first, double perRevolution, boolean series) {
        double aa = 0;
        double ab = 0;
        double bb = 0;
        double ay = 0;
        double by = 0;
        for (int i = first; i < samples.size(); i += 2) {
            Sample sample = samples.get(i);
            double flow = sample.revolutions() * perRevolution;
            double wanted = (series ? sample.drop() : sample.inlet()) * 1e3;
            double a = RAILWAY_OIL.at(sample.temperature()).dynamicViscosity() * flow / wanted;
            double b = RAILWAY_OIL.at(sample.temperature()).density() * flow * flow / wanted;
            aa += a * a;
            ab += a * b;
            bb += b * b;
            ay += a;
            by += b;
        }
        double determinant = aa * bb - ab * ab;
        return new AdditiveLaw((ay * bb - by * ab) / determinant, (aa * by - ab * ay) / determinant);
    }

    /** Pressure [Pa] of the bin that starts at a speed [rpm] and temperature [C]. */
    private static double airCooled(double speedFrom, double temperatureFrom) throws IOException {
        for (double[] row : rows("air_cooled_engine_oil_pressure.csv")) {
            if (row[0] == speedFrom && row[2] == temperatureFrom) {
                return row[5] * 1e3;
            }
        }
        throw new IllegalArgumentException("no bin at " + speedFrom + " rpm, " + temperatureFrom + " C");
    }

    /** Running samples without the three transients whose ratio lies outside 0.15 to 0.38. */
    private static List<Sample> railway() throws IOException {
        List<Sample> samples = new ArrayList<>();
        for (double[] row : rows("railway_diesel_oil_circuit.csv")) {
            double inlet = (row[1] + row[2]) / 2;
            Sample sample = new Sample(row[0] / 60, row[4] + ZERO, inlet - REST_INLET, row[3] - inlet - REST_DROP);
            if (row[0] > 0 && sample.ratio() > 0.15 && sample.ratio() < 0.38) {
                samples.add(sample);
            }
        }
        return samples;
    }

    /** One running sample: speed [rev/s], oil [K], inlet pressure and drop before it [kPa]. */
    private record Sample(double revolutions, double temperature, double inlet, double drop) {
        double ratio() {
            return drop / inlet;
        }
    }

    private static List<double[]> rows(String name) throws IOException {
        List<double[]> rows = new ArrayList<>();
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(MeasuredCircuitsTest.class.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (Character.isDigit(line.charAt(0))) {
                    String[] cells = line.split(",", -1);
                    double[] row = new double[cells.length];
                    for (int i = 0; i < cells.length; i++) {
                        row[i] = Double.parseDouble(cells[i]);
                    }
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static ExternalCheck check(String quantity, String source) {
        return ExternalCheck.of(Topic.CIRCUIT, quantity, source);
    }
}
