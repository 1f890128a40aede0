package org.coldpleat.validation.analytic;

import java.util.Map;
import org.coldpleat.model.loading.FiltrationRatio;
import org.coldpleat.model.loading.sump.SumpBalance;
import org.coldpleat.model.loading.sump.SumpFlows;
import org.coldpleat.model.loading.sump.SumpState;
import org.coldpleat.validation.TableRows;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * A reservoir of 10 L, 20 L/min, dust injected at 0.25 L/min of 0.8 g/L (10 mg for each liter of flow). Expected values
 * derived here: C at rest = G/(E Q), tau = V/(E Q), C = C at rest (1 - exp(-t/tau)).
 */
class SumpBalanceExampleTest {
    private static final double LITERS_PER_MINUTE = 1e-3 / 60;
    private static final double VOLUME = 0.010;
    private static final double FLOW = 20 * LITERS_PER_MINUTE;
    private static final double INJECTION = 0.25 * LITERS_PER_MINUTE;
    private static final double SOURCE = INJECTION * 0.8;
    private static final SumpFlows PLAIN = SumpFlows.of(VOLUME, FLOW, 0);

    /** Half of the last printed digit of mg/L with four decimals, in kg/m3. */
    private static final double PRINTED = 5.1e-8;

    @Test
    void restAndTransientAtHighEfficiency() {
        check("concentration at rest, 96.5 % caught")
                .expected(10.3627e-3, "kg/m3")
                .computed(SumpBalance.steadyConcentration(PLAIN, 0.965, SOURCE))
                .within(PRINTED, "half the last of the printed digits");
        check("time constant of the sump, 96.5 % caught")
                .expected(31.088, "s")
                .computed(SumpBalance.timeConstant(PLAIN, 0.965))
                .within(5.1e-4, "half the last of the printed digits");
        SumpState minute = after60Seconds(0.965, PLAIN);
        check("concentration after a minute, 96.5 % caught")
                .expected(8.8586e-3, "kg/m3")
                .computed(minute.concentration(VOLUME)[0])
                .within(PRINTED, "half the last of the printed digits");
        check("dirt caught in a minute, 96.5 % caught")
                .expected(0.11141e-3, "kg")
                .computed(minute.retainedMass())
                .within(5.1e-9, "half the last of the printed digits");
    }

    @Test
    void restAndTransientAtHalfEfficiency() {
        check("concentration at rest, half caught")
                .expected(20e-3, "kg/m3")
                .computed(SumpBalance.steadyConcentration(PLAIN, 0.5, SOURCE))
                .within(PRINTED, "half the last of the printed digits");
        check("time constant of the sump, half caught")
                .expected(60, "s")
                .computed(SumpBalance.timeConstant(PLAIN, 0.5))
                .within(1e-12, "arithmetic");
        SumpState minute = after60Seconds(0.5, PLAIN);
        check("concentration after a minute, half caught")
                .expected(12.6424e-3, "kg/m3")
                .computed(minute.concentration(VOLUME)[0])
                .within(PRINTED, "half the last of the printed digits");
        check("dirt caught in a minute, half caught")
                .expected(0.073576e-3, "kg")
                .computed(minute.retainedMass())
                .within(5.1e-10, "half the last of the printed digits");
    }

    @Test
    void samplesChangeTheRestBySoMuch() {
        SumpFlows halves = new SumpFlows(VOLUME, FLOW, 0, INJECTION / 2, INJECTION / 2, 0);
        check("rest with samples taken on both sides")
                .expected(10.3580e-3, "kg/m3")
                .computed(SumpBalance.steadyConcentration(halves, 0.965, SOURCE))
                .within(PRINTED, "half the last of the printed digits");
        // G/(q_i + (Q - q_i) E) and G/(Q E + q_i (1 - E)): the same number, since all that is sampled was injected
        SumpFlows before = new SumpFlows(VOLUME, FLOW, 0, INJECTION, 0, 0);
        SumpFlows behind = new SumpFlows(VOLUME, FLOW, 0, 0, INJECTION, 0);
        double expected = 0.25 * 0.8 / (0.25 + 19.75 * 0.965);
        check("rest with all samples before the filter")
                .expected(expected, "kg/m3")
                .computed(SumpBalance.steadyConcentration(before, 0.965, SOURCE))
                .within(1e-15, "arithmetic");
        check("rest with all samples behind the filter")
                .expected(expected, "kg/m3")
                .computed(SumpBalance.steadyConcentration(behind, 0.965, SOURCE))
                .within(1e-15, "arithmetic");
    }

    @Test
    void leakRaisesTheRest() {
        SumpFlows leaking = SumpFlows.of(VOLUME, FLOW, 0.02);
        check("rest with 2 % leak")
                .expected(10.5742e-3, "kg/m3")
                .computed(SumpBalance.steadyConcentration(leaking, 0.965, SOURCE))
                .within(PRINTED, "half the last of the printed digits");
        check("efficiency with 2 % leak")
                .expected(0.9457, "1")
                .computed(FiltrationRatio.efficiencyWithLeak(0.965, 0.02))
                .within(1e-12, "arithmetic");
    }

    @Test
    void cleanUpFallsByETimesInOneTimeConstant() {
        SumpState dirty = SumpState.dirtyOil(new double[] {1e-4});
        SumpState later = SumpBalance.advance(dirty, PLAIN, new double[] {0.5}, new double[] {0}, 60);
        check("clean-up in one time constant")
                .expected(Math.exp(-1), "1")
                .computed(later.suspendedMass() / dirty.suspendedMass())
                .within(1e-14, "arithmetic");
    }

    @Test
    void downstreamAtRestIsInjectionOverBetaLessOne() {
        double beta = FiltrationRatio.beta(0.965);
        double rest = SumpBalance.steadyConcentration(PLAIN, 0.965, SOURCE);
        check("downstream concentration at rest")
                .expected(SOURCE / FLOW / (beta - 1), "kg/m3")
                .computed(SumpBalance.downstream(PLAIN, 0.965, rest))
                .within(1e-15, "arithmetic");
        check("upstream concentration at rest")
                .expected(SOURCE / FLOW * beta / (beta - 1), "kg/m3")
                .computed(rest)
                .within(1e-15, "arithmetic");
    }

    @Test
    void leakTableIsReproduced() {
        String[] leaks = {"0.005", "0.01", "0.02", "0.05", "0.10"};
        for (Map<String, String> row : TableRows.read(SumpBalanceExampleTest.class, "leak_table.csv")) {
            double beta = Double.parseDouble(row.get("beta"));
            for (String leak : leaks) {
                double printed = Double.parseDouble(row.get("leak_" + leak));
                double found = FiltrationRatio.withLeak(beta, Double.parseDouble(leak));
                // half of the last of five significant digits
                check("filtration ratio with a leak")
                        .at("beta " + beta + ", leak " + leak)
                        .expected(printed, "1")
                        .computed(found)
                        .withinRelative(5.1e-5, "half the last of five digits");
            }
        }
    }

    @Test
    void stepAgreesWithNumericalIntegrationOfTheSameBalance() {
        SumpFlows flows = new SumpFlows(VOLUME, FLOW, 0.1, 3e-6, 2e-6, 1e-6);
        double clearing = 3e-6 + 0.9 * 0.8 * (FLOW - 3e-6) + 2e-6 * (1 - 0.72) + 1e-6;
        OrdinaryDifferentialEquation balance = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                // concentration [g/m3] and mass caught [g]
                return new double[] {(1e3 * SOURCE - clearing * y[0]) / VOLUME, 0.72 * (FLOW - 3e-6) * y[0]};
            }
        };
        double[] end = new DormandPrince853Integrator(1e-6, 10, 1e-12, 1e-12)
                .integrate(balance, new ODEState(0, new double[2]), 90)
                .getPrimaryState();
        SumpState state = SumpBalance.advance(SumpState.clean(1), flows, new double[] {0.8}, new double[] {SOURCE}, 90);
        // integrator tolerance 1e-12 a step, tens of steps
        check("concentration against numerical integration")
                .expected(1e-3 * end[0], "kg/m3")
                .computed(state.concentration(VOLUME)[0])
                .within(1e-13, "integrator tolerance 1e-12 a step, tens of steps");
        check("dirt caught against numerical integration")
                .expected(1e-3 * end[1], "kg")
                .computed(state.retainedMass())
                .within(1e-13, "integrator tolerance 1e-12 a step, tens of steps");
    }

    private static SumpState after60Seconds(double efficiency, SumpFlows flows) {
        return SumpBalance.advance(SumpState.clean(1), flows, new double[] {efficiency}, new double[] {SOURCE}, 60);
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, "derived here");
    }
}
