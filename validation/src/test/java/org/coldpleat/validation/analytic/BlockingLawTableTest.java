package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.validation.TableRows;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Blocking laws against their printed closed forms and against their differential equations. */
class BlockingLawTableTest {
    private static final String SOURCE = "derived here";

    /** Half of the last of six significant digits, on values up to 5. */
    private static final double PRINTED = 5.1e-6;

    @Test
    void closedFormsMatchTheTable() {
        for (Map<String, String> row : TableRows.read(BlockingLawTableTest.class, "blocking_law_table.csv")) {
            double coefficient = 3.7;
            BlockingLaw law = new BlockingLaw(value(row, "n"), coefficient);
            for (String km : new String[] {"0.1", "0.25", "0.5", "0.8"}) {
                double expected = value(row, "ratio_at_Km_" + km);
                check("resistance ratio of the blocking law")
                        .at("n " + row.get("n") + ", K m " + km)
                        .expected(expected, "1")
                        .computed(law.resistanceRatio(Double.parseDouble(km) / coefficient))
                        .within(PRINTED, "half the last of six digits");
            }
            check("dirt at four times the clean resistance")
                    .at("n " + row.get("n"))
                    .expected(value(row, "Km_at_ratio_4"), "1")
                    .computed(coefficient * law.massPerArea(4))
                    .within(PRINTED, "half the last of six digits");
            double cleanVelocity = 0.0017;
            double concentration = 2.2;
            double time = law.timeAtConstantPressure(0.5 / coefficient / concentration, cleanVelocity, concentration);
            double scaled = coefficient * concentration * cleanVelocity * time;
            check("time at constant pressure")
                    .at("n " + row.get("n"))
                    .expected(value(row, "time_at_KV_half"), "1")
                    .computed(scaled)
                    .within(PRINTED, "half the last of six digits");
        }
    }

    @Test
    void ratioSolvesItsDifferentialEquation() {
        for (double n = 0; n <= 2.5; n += 0.25) {
            BlockingLaw law = new BlockingLaw(n, 1);
            double end = 0.6;
            double numeric = integrate(new double[] {1}, end, power(n))[0];
            // integrator tolerance 1e-12 on values up to 4, the steepest law amplifies it by ratio^n, about 30
            check("resistance ratio against integration of its equation")
                    .at("n " + n)
                    .expected(numeric, "1")
                    .computed(law.resistanceRatio(end))
                    .within(1e-9, "tolerance 1e-12 of the integrator, amplified by the steepest law");
        }
    }

    /**
     * The characteristic equation of blocking filtration at constant pressure, d2t/dV2 = k (dt/dV)^n (Hermia 1982, Trans.
     * IChemE 60, from memory), integrated as it stands: t and dt/dV over V, K = c = J0 = 1.
     */
    @Test
    void timeAtConstantPressureSolvesTheCharacteristicEquation() {
        for (double n = 0; n <= 2.5; n += 0.25) {
            double exponent = n;
            double[] end = integrate(new double[] {0, 1}, 0.6, (v, y) -> new double[] {y[1], Math.pow(y[1], exponent)});
            // as above
            ExternalCheck.of(
                            Topic.LOADING,
                            "time at constant pressure against integration",
                            "Hermia 1982, Trans. IChemE 60, equation from memory")
                    .at("n " + n)
                    .expected(end[0], "1")
                    .computed(new BlockingLaw(n, 1).timeAtConstantPressure(0.6, 1, 1))
                    .within(1e-9, "tolerance 1e-12 of the integrator, amplified by the steepest law");
        }
    }

    @Test
    void resistanceNeverFallsAndHigherExponentsBlockHarder() {
        for (double mass = 0.01; mass < 0.45; mass += 0.01) {
            double before = 1;
            for (double n = 0; n <= 3; n += 0.1) {
                BlockingLaw law = new BlockingLaw(n, 1);
                assertTrue(law.resistanceRatio(mass) > before, "n " + n + " at " + mass);
                assertTrue(law.resistanceRatio(mass + 0.01) > law.resistanceRatio(mass));
                before = law.resistanceRatio(mass) * (1 - 1e-12);
            }
        }
    }

    private interface Rates {
        double[] at(double x, double[] y);
    }

    private static Rates power(double exponent) {
        return (x, y) -> new double[] {Math.pow(y[0], exponent)};
    }

    private static double[] integrate(double[] start, double end, Rates rates) {
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return start.length;
            }

            @Override
            public double[] computeDerivatives(double x, double[] y) {
                return rates.at(x, y);
            }
        };
        return new DormandPrince853Integrator(1e-10, 0.1, 1e-12, 1e-12)
                .integrate(equation, new ODEState(0, start), end)
                .getPrimaryState();
    }

    private static double value(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.LOADING, quantity, SOURCE);
    }
}
