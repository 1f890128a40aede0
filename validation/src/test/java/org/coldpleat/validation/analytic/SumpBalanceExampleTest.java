package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.coldpleat.model.loading.FiltrationRatio;
import org.coldpleat.model.loading.SumpBalance;
import org.coldpleat.model.loading.SumpFlows;
import org.coldpleat.model.loading.SumpState;
import org.coldpleat.validation.TableRows;
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
        assertEquals(10.3627e-3, SumpBalance.steadyConcentration(PLAIN, 0.965, SOURCE), PRINTED);
        assertEquals(31.088, SumpBalance.timeConstant(PLAIN, 0.965), 5.1e-4);
        SumpState minute = after60Seconds(0.965, PLAIN);
        assertEquals(8.8586e-3, minute.concentration(VOLUME)[0], PRINTED);
        assertEquals(0.11141e-3, minute.retainedMass(), 5.1e-9);
    }

    @Test
    void restAndTransientAtHalfEfficiency() {
        assertEquals(20e-3, SumpBalance.steadyConcentration(PLAIN, 0.5, SOURCE), PRINTED);
        assertEquals(60, SumpBalance.timeConstant(PLAIN, 0.5), 1e-12);
        SumpState minute = after60Seconds(0.5, PLAIN);
        assertEquals(12.6424e-3, minute.concentration(VOLUME)[0], PRINTED);
        assertEquals(0.073576e-3, minute.retainedMass(), 5.1e-10);
    }

    @Test
    void samplesChangeTheRestBySoMuch() {
        SumpFlows halves = new SumpFlows(VOLUME, FLOW, 0, INJECTION / 2, INJECTION / 2, 0);
        assertEquals(10.3580e-3, SumpBalance.steadyConcentration(halves, 0.965, SOURCE), PRINTED);
        // G/(q_i + (Q - q_i) E) and G/(Q E + q_i (1 - E)): the same number, since all that is sampled was injected
        SumpFlows before = new SumpFlows(VOLUME, FLOW, 0, INJECTION, 0, 0);
        SumpFlows behind = new SumpFlows(VOLUME, FLOW, 0, 0, INJECTION, 0);
        double expected = 0.25 * 0.8 / (0.25 + 19.75 * 0.965);
        assertEquals(expected, SumpBalance.steadyConcentration(before, 0.965, SOURCE), 1e-15);
        assertEquals(expected, SumpBalance.steadyConcentration(behind, 0.965, SOURCE), 1e-15);
    }

    @Test
    void leakRaisesTheRest() {
        SumpFlows leaking = SumpFlows.of(VOLUME, FLOW, 0.02);
        assertEquals(10.5742e-3, SumpBalance.steadyConcentration(leaking, 0.965, SOURCE), PRINTED);
        assertEquals(0.9457, FiltrationRatio.efficiencyWithLeak(0.965, 0.02), 1e-12);
    }

    @Test
    void cleanUpFallsByETimesInOneTimeConstant() {
        SumpState dirty = SumpState.dirtyOil(new double[] {1e-4});
        SumpState later = SumpBalance.advance(dirty, PLAIN, new double[] {0.5}, new double[] {0}, 60);
        assertEquals(Math.exp(-1), later.suspendedMass() / dirty.suspendedMass(), 1e-14);
    }

    @Test
    void downstreamAtRestIsInjectionOverBetaLessOne() {
        double beta = FiltrationRatio.beta(0.965);
        double rest = SumpBalance.steadyConcentration(PLAIN, 0.965, SOURCE);
        assertEquals(SOURCE / FLOW / (beta - 1), SumpBalance.downstream(PLAIN, 0.965, rest), 1e-15);
        assertEquals(SOURCE / FLOW * beta / (beta - 1), rest, 1e-15);
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
                assertEquals(printed, found, 5.1e-5 * printed, row + " " + leak);
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
        assertEquals(1e-3 * end[0], state.concentration(VOLUME)[0], 1e-13);
        assertEquals(1e-3 * end[1], state.retainedMass(), 1e-13);
    }

    private static SumpState after60Seconds(double efficiency, SumpFlows flows) {
        return SumpBalance.advance(SumpState.clean(1), flows, new double[] {efficiency}, new double[] {SOURCE}, 60);
    }
}
