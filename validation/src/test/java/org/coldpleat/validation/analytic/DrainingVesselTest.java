package org.coldpleat.validation.analytic;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.coldpleat.model.bench.BenchEstimate;
import org.coldpleat.model.bench.DrainReading;
import org.coldpleat.model.bench.DrainTest;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** A vessel draining by its own head, against closed forms (derived here). */
class DrainingVesselTest {
    private static final String SOURCE = "derived here";

    private static final double GRAVITY = 9.80665;
    private static final double AREA = 0.02;

    private static DrainTest.Rig rig(AdditiveLaw hose) {
        return new DrainTest.Rig(Measured.exact(Kind.AREA, AREA, Provenance.MEASURED), hose, 1e-5, 0, 0, 0, 0);
    }

    private static List<DrainReading> times(double step, double coolingRate) {
        List<DrainReading> log = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            log.add(new DrainReading(step * i, 1, 313 - coolingRate * step * i));
        }
        return log;
    }

    /** Creeping flow at one temperature: h = h0 exp(-rho g t/(mu psi S)). */
    @Test
    void isothermalCreepingHeadFallsExponentially() {
        double psi = 4e8;
        List<DrainReading> log = times(30, 0);
        double[] heads = DrainTest.heads(psi, 0.5, log, rig(AdditiveLaw.NONE), t -> new Fluid(0.05, 850));
        for (int i = 0; i < heads.length; i++) {
            double exact = 0.5 * Math.exp(-850 * GRAVITY * 30 * i / (0.05 * psi * AREA));
            check("head of a vessel that drains in creeping flow")
                    .at(30 * i + " s")
                    .expected(exact, "m")
                    .computed(heads[i])
                    .within(1e-9, "integration error");
        }
    }

    /** Oil that thickens exponentially while it cools at a constant rate c: the integral of 1/mu is closed. */
    @Test
    void coolingHeadFollowsTheIntegralOfFluidity() {
        double psi = 4e8;
        double slope = 0.05;
        double rate = 0.02;
        DoubleFunction<Fluid> oil = t -> new Fluid(0.05 * Math.exp(-slope * (t - 313)), 850);
        List<DrainReading> log = times(30, rate);
        double[] heads = DrainTest.heads(psi, 0.5, log, rig(AdditiveLaw.NONE), oil);
        List<DrainReading> read = new ArrayList<>();
        for (int i = 0; i < heads.length; i++) {
            double age = (1 - Math.exp(-slope * rate * 30 * i)) / (slope * rate);
            double exact = 0.5 * Math.exp(-850 * GRAVITY * age / (0.05 * psi * AREA));
            check("head of a vessel that drains while it cools")
                    .at(30 * i + " s")
                    .expected(exact, "m")
                    .computed(heads[i])
                    .within(1e-8, "integration error");
            read.add(new DrainReading(30.0 * i, exact, log.get(i).temperature()));
        }
        BenchEstimate estimate = DrainTest.fallingHead(read, rig(AdditiveLaw.NONE), oil);
        check("resistance back from the falling head")
                .expected(psi, "1/m3")
                .computed(estimate.value().orElseThrow().value())
                .withinRelative(1e-6, "fit near rounding");
    }

    /** Inertia alone: the root of the head falls evenly (Torricelli 1643), d sqrt(h)/dt = -sqrt(g/b)/(2 S). */
    @Test
    void inertialHeadFollowsTorricelli() {
        double inertial = 5e8;
        double[] heads =
                DrainTest.heads(1, 0.5, times(10, 0), rig(new AdditiveLaw(0, inertial)), t -> new Fluid(1e-9, 850));
        for (int i = 0; i < heads.length; i++) {
            double root = Math.sqrt(0.5) - Math.sqrt(GRAVITY / inertial) / (2 * AREA) * 10 * i;
            ExternalCheck.of(Topic.OPENINGS, "head of a vessel that drains by inertia", "Torricelli 1643, derived here")
                    .at(10 * i + " s")
                    .expected(root * root, "m")
                    .computed(heads[i])
                    .within(1e-7, "integration error");
        }
    }

    /** 24 in of oil of 850 kg/m3 press 5.08 kPa (derived here; US specification F-F-351F states about 5.1 kPa). */
    @Test
    void specifiedDrainBackHead() {
        ExternalCheck.of(
                        Topic.OPENINGS,
                        "pressure of 24 in of oil",
                        "derived here; US specification F-F-351F states about 5.1 kPa")
                .expected(5080, "Pa")
                .computed(DrainTest.headPressure(0.6096, 850))
                .within(5, "half the last digit of 5.08 kPa");
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.OPENINGS, quantity, SOURCE);
    }
}
