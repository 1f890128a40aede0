package org.coldpleat.model.loading;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Dirt balance of a well-mixed sump, each size class for itself: {@code V dC/dt = G - k C} with {@code k = q_u + (1 - l)
 * E (Q - q_u) + q_d (1 - (1 - l) E) + q_x}.
 *
 * <p>C concentration [kg/m3], V sump volume [m3], G dirt coming in [kg/s], Q flow, q_u and q_d samples before and behind
 * the filter, q_x oil replaced [m3/s], l bypass share, E efficiency of the medium. While these are constant the
 * solution is exact over a step of any length: {@code C = G/k + (C0 - G/k) exp(-k t/V)}. What is caught, sampled and
 * lost is each computed from the exact integral of C, so that mass closure is a check and no identity.
 */
@Source("mass balance, derived here; without samples and loss the common form C = (G/Q) beta/(beta - 1) at rest")
@Validity("well-mixed sump, constant volume, no settling; exact while the coefficients are constant")
public final class SumpBalance {
    private SumpBalance() {}

    /**
     * The state after a time of constant flows.
     *
     * @param state at the start
     * @param flows oil flows
     * @param efficiency share caught by the medium in one pass [0..1], double[classes]
     * @param source dirt coming into the oil: wear, ingestion, injection and that of make-up oil [kg/s], double[classes]
     * @param duration [s], at least 0
     */
    public static SumpState advance(
            SumpState state, SumpFlows flows, double[] efficiency, double[] source, double duration) {
        int classes = state.classes();
        Require.entries("efficiency", efficiency.length, classes);
        Require.entries("source", source.length, classes);
        Require.notNegative("duration", duration, "s");
        double[] suspended = state.suspended();
        double[] retained = state.retained();
        double[] sampled = state.sampled();
        double[] removed = state.removed();
        double[] supplied = state.supplied();
        for (int i = 0; i < classes; i++) {
            Require.within("efficiency", efficiency[i], 0, 1, "1");
            Require.notNegative("source", source[i], "kg/s");
            double x = flows.clearedFlow(efficiency[i]) * duration / flows.volume();
            double added = source[i] * duration;
            // exposure: integral of the concentration over time [kg s/m3]
            double exposure = (suspended[i] * decayMean(x) + added * rampMean(x)) * duration / flows.volume();
            suspended[i] = suspended[i] * Math.exp(-x) + added * decayMean(x);
            retained[i] += flows.capturedFlow(efficiency[i]) * exposure;
            sampled[i] += flows.sampledFlow(efficiency[i]) * exposure;
            removed[i] += flows.replacement() * exposure;
            supplied[i] += added;
        }
        return new SumpState(suspended, retained, sampled, removed, supplied);
    }

    /**
     * Concentration at rest [kg/m3]; infinite if dirt comes in and nothing takes it out.
     *
     * @param flows oil flows
     * @param efficiency share caught by the medium in one pass [0..1]
     * @param source dirt coming in [kg/s], at least 0
     */
    public static double steadyConcentration(SumpFlows flows, double efficiency, double source) {
        Require.notNegative("source", source, "kg/s");
        return source == 0 ? 0 : source / flows.clearedFlow(Require.within("efficiency", efficiency, 0, 1, "1"));
    }

    /** Time in which the distance from rest falls to 1/e [s]; infinite if nothing is taken out. */
    public static double timeConstant(SumpFlows flows, double efficiency) {
        return flows.volume() / flows.clearedFlow(Require.within("efficiency", efficiency, 0, 1, "1"));
    }

    /** Concentration behind the filter [kg/m3] for one before it [kg/m3, at least 0]. */
    public static double downstream(SumpFlows flows, double efficiency, double upstream) {
        Require.notNegative("upstream", upstream, "kg/m3");
        return upstream * (1 - FiltrationRatio.efficiencyWithLeak(efficiency, flows.bypassShare()));
    }

    /** (1 - exp(-x))/x. */
    private static double decayMean(double x) {
        return x == 0 ? 1 : -Math.expm1(-x) / x;
    }

    /** (x - 1 + exp(-x))/x^2: up to 1 by its series, since the closed form loses digits there. */
    private static double rampMean(double x) {
        if (x > 1) {
            return (x + Math.expm1(-x)) / (x * x);
        }
        double sum = 0;
        double term = 0.5;
        for (int k = 3; Math.abs(term) > Math.ulp(sum); k++) {
            sum += term;
            term *= -x / k;
        }
        return sum;
    }
}
