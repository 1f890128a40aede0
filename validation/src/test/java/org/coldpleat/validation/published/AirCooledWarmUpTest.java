package org.coldpleat.validation.published;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.coldstart.StartPoint;
import org.coldpleat.model.coldstart.StartSchedule;
import org.coldpleat.model.coldstart.StartUp;
import org.coldpleat.model.coldstart.StartUpResult;
import org.coldpleat.model.coldstart.StartUpSpec;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.thermal.ThermalModel;
import org.coldpleat.validation.TableRows;
import org.coldpleat.validation.analytic.OneViscosity;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/**
 * The heat model against the logged warm-up of an air-cooled engine (NGAFID flight F1; the head of the table says more).
 * The parameters are fitted to the same log, so the checks judge the shape: two nodes can follow it, one lump cannot.
 */
class AirCooledWarmUpTest {
    private static final String SOURCE = "logged warm-up of an air-cooled engine (NGAFID flight F1)";

    private static final List<Map<String, String>> LOG =
            TableRows.read(AirCooledWarmUpTest.class, "air_cooled_engine_warm_up.csv");
    private static final double START = 288.04;
    /** About 7.6 L at 870 kg/m3, from memory; with 1900 J/(kg K) it only scales the heat flows. */
    private static final double MASS = 6.6;

    private static final double OIL = MASS * 1900;

    /** A start without pumping: the heat model alone, read at the logged times. */
    private static double[] warmUp(ThermalModel thermal, double toMetal, double toOil) {
        EngineCircuit engine = new EngineCircuit(
                Pump.unlimited(1e-6, 0),
                List.of(),
                AdditiveLaw.NONE,
                Gallery.laminar(1e10),
                new OneViscosity(0.1, 870));
        StartUpSpec spec = new StartUpSpec(
                engine,
                FilterAssembly.ofPack(1e9),
                thermal,
                Optional.empty(),
                StartSchedule.steady(0, toMetal, toOil),
                START,
                0,
                400,
                1,
                1e-8);
        double[] found = new double[LOG.size()];
        for (int i = 0; i < found.length; i++) {
            double time = Double.parseDouble(LOG.get(i).get("t_s"));
            found[i] = time == 0 ? START - 273.15 : endOf(spec, time);
        }
        return found;
    }

    private static double endOf(StartUpSpec spec, double time) {
        StartUpResult result = StartUp.run(new StartUpSpec(
                spec.engine(),
                spec.filter(),
                spec.thermal(),
                spec.trace(),
                spec.schedule(),
                spec.startTemperature(),
                0,
                400,
                time,
                1e-8));
        List<StartPoint> series = result.series();
        return series.get(series.size() - 1).oilTemperature() - 273.15;
    }

    private static double at(double[] curve, double time) {
        for (int i = 0; i < LOG.size(); i++) {
            if (Double.parseDouble(LOG.get(i).get("t_s")) == time) {
                return curve[i];
            }
        }
        throw new IllegalArgumentException("not logged: " + time);
    }

    private static double measured(int i) {
        return Double.parseDouble(LOG.get(i).get("T_oil_C"));
    }

    /** Two equal lags of 311 s toward 70 C: metal so heavy that the oil does not load it. */
    private static double[] equalLags() {
        double heavy = 1e10;
        double air = 287.15;
        ThermalModel thermal = ThermalModel.twoMass(MASS, heavy * OIL, OIL / 311, 0, heavy * OIL / 311, air);
        return warmUp(thermal, heavy * OIL / 311 * (343.15 - air), 0);
    }

    @Test
    void twoEqualLagsMeetTheirClosedFormAndTheLog() {
        double[] curve = equalLags();
        double largest = 0;
        for (int i = 0; i < curve.length; i++) {
            double x = Double.parseDouble(LOG.get(i).get("t_s")) / 311;
            double closed = 70 - (70 - (START - 273.15)) * (1 + x) * Math.exp(-x);
            // loading of the metal by the oil splits the lags by the root of their heat capacities, 1e-5
            ExternalCheck.of(Topic.CIRCUIT, "oil temperature of two equal lags", "derived here")
                    .expected(closed, "°C")
                    .computed(curve[i])
                    .within(1e-3, "loading of the metal by the oil splits the lags by 1e-5");
            largest = Math.max(largest, Math.abs(curve[i] - measured(i)));
        }
        // 1.2 K: the fit leaves 0.56 K rms and 0.9 K at most, the log's sensor is not specified
        check("largest miss of two equal lags over the log")
                .toleranceSetAfterwards()
                .computed(largest, "K")
                .below(1.2, "the fit leaves 0.56 K rms and 0.9 K at most, the sensor of the log is not specified");
        check("oil temperature at 60 s, two equal lags fitted to the log")
                .toleranceSetAfterwards()
                .expected(16.4, "°C")
                .computed(at(curve, 60))
                .within(1.2, "the fit leaves 0.9 K at most, the sensor of the log is not specified");
        check("oil temperature at 240 s, two equal lags fitted to the log")
                .toleranceSetAfterwards()
                .expected(24.0, "°C")
                .computed(at(curve, 240))
                .within(1.2, "the fit leaves 0.9 K at most, the sensor of the log is not specified");
        check("oil temperature at 420 s, two equal lags fitted to the log")
                .toleranceSetAfterwards()
                .expected(36.4, "°C")
                .computed(at(curve, 420))
                .within(1.2, "the fit leaves 0.9 K at most, the sensor of the log is not specified");
        check("oil temperature at 600 s, two equal lags fitted to the log")
                .toleranceSetAfterwards()
                .expected(47.5, "°C")
                .computed(at(curve, 600))
                .within(1.2, "the fit leaves 0.9 K at most, the sensor of the log is not specified");
    }

    @Test
    void engineOfPlausibleMassFollowsTheLogToo() {
        // oil a sixth of the metal's heat capacity; lags and heat fitted by least squares to the first 900 s
        double metal = OIL / 0.157;
        double air = 287.15;
        double exchange = OIL * 2.96459849e-3;
        double loss = metal * 3.42989623e-3;
        double heat = loss * (273.15 + 72.8793 - air);
        double[] curve = warmUp(ThermalModel.twoMass(MASS, metal, exchange, 0, loss, air), heat, 0);
        for (int i = 0; i < curve.length; i++) {
            check("oil temperature, engine of plausible mass fitted to the log")
                    .at(LOG.get(i).get("t_s") + " s")
                    .toleranceSetAfterwards()
                    .expected(measured(i), "°C")
                    .computed(curve[i])
                    .within(
                            1.2,
                            "fitted to the first 900 s, the fit leaves 1.1 K; the sensor of the log is not specified");
        }
    }

    @Test
    void oneLumpWarmsTheOilTooEarly() {
        // toward 70 C with the lag that meets the log at 600 s: documents why the metal has a node of its own
        double air = 287.15;
        ThermalModel thermal = ThermalModel.twoMass(MASS, 1, 0, OIL / 670, 0, air);
        double[] curve = warmUp(thermal, 0, OIL / 670 * (343.15 - air));
        check("oil temperature at 600 s, one lump with its lag fitted there")
                .toleranceSetAfterwards()
                .expected(47.5, "°C")
                .computed(at(curve, 600))
                .within(0.5, "fitted to this point");
        ExternalCheck.of(Topic.CIRCUIT, "oil temperature at 180 s of that one lump", "derived here")
                .expected(27.9, "°C")
                .computed(at(curve, 180))
                .within(0.1, "last digit");
        check("oil of one lump less the log at 180 s, 21.0 °C")
                .computed(at(curve, 180) - 21.0, "K")
                .above(6, "why the metal has a node of its own");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.CIRCUIT, quantity, SOURCE);
    }
}
