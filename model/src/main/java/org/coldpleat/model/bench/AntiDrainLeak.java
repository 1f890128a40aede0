package org.coldpleat.model.bench;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/** Leak of the anti-drain flap: from the jar and the stopwatch to other oils and heads, and to the delay at a start. */
@Source("derived here: laminar leak under its own head, Q proportional to g h/nu")
@Validity("laminar leak past a wetted lip; a gap that changes with the head makes the scaled leak too high or too low")
public final class AntiDrainLeak {
    /** Leak above which a filter would fail the test of the specification in its first hour [m3/s]. */
    @Source("US federal specification F-F-351F: at most 10 mL/h at 24 in head of oil of 3.6 to 5.8 mm2/s")
    private static final double SPECIFIED_LEAK = 10e-6 / 3600;

    @Source("US federal specification F-F-351F: 24 in head")
    private static final double SPECIFIED_HEAD = 0.6096;

    /** Middle of 3.6 to 5.8 mm2/s [m2/s]. */
    @Source("US federal specification F-F-351F")
    private static final double SPECIFIED_VISCOSITY = 4.7e-6;

    private AntiDrainLeak() {}

    /**
     * Leak under other conditions.
     *
     * @param leak measured [m3/s]
     * @param head at which it was measured [m]
     * @param viscosity kinematic, of the oil then [m2/s]
     * @param otherHead [m]
     * @param otherViscosity kinematic [m2/s]
     * @return [m3/s]; 10 mL/h at 4.7 mm2/s become 0.36 mL/h at 130 mm2/s
     */
    public static double scaled(double leak, double head, double viscosity, double otherHead, double otherViscosity) {
        Require.notNegative("leak", leak, "m3/s");
        Require.positive("head", head, "m");
        Require.positive("viscosity", viscosity, "m2/s");
        Require.notNegative("otherHead", otherHead, "m");
        Require.positive("otherViscosity", otherViscosity, "m2/s");
        return leak * otherHead / head * viscosity / otherViscosity;
    }

    /**
     * Time the pump needs to refill what has leaked out.
     *
     * @param leak at standstill [m3/s]
     * @param standing time since the engine stopped [s]
     * @param drainable volume above the flap that can run out [m3]
     * @param pumpFlow at the start [m3/s]
     * @return [s]; grows with the standing time until the filter is empty
     */
    public static double refillDelay(double leak, double standing, double drainable, double pumpFlow) {
        Require.notNegative("leak", leak, "m3/s");
        Require.notNegative("standing", standing, "s");
        Require.notNegative("drainable", drainable, "m3");
        Require.positive("pumpFlow", pumpFlow, "m3/s");
        return Math.min(leak * standing, drainable) / pumpFlow;
    }

    /** Findings on a measured leak: whether it passes the specified limit, and how far the head or oil is from it. */
    public static List<Notice> judge(double leak, double head, double viscosity) {
        double specified = scaled(leak, head, viscosity, SPECIFIED_HEAD, SPECIFIED_VISCOSITY);
        List<Notice> notices = new ArrayList<>();
        Amount amount = new Amount(Look.LEAK, specified);
        String code = specified > SPECIFIED_LEAK ? "bench.leak.aboveSpecified" : "bench.leak.withinSpecified";
        notices.add(Notice.of(
                code, Severity.INFO, "anti-drain flap", amount, new Amount(Look.SHARP_LENGTH, SPECIFIED_HEAD)));
        double factor = specified / Math.max(leak, Double.MIN_NORMAL);
        if (factor > 5 || factor < 0.2) {
            notices.add(Notice.of(
                    "bench.leak.farScaled", Severity.WARNING, "anti-drain flap", new Amount(Look.PLAIN_RATIO, factor)));
        }
        return notices;
    }
}
