package org.coldpleat.validation.reference;

import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * An incompressible cake on a medium: {@code R = R_m + alpha m}, at constant pressure {@code t/V = mu alpha c V/(2 A^2
 * dp) + mu R_m/(A dp)}.
 *
 * <p>Do not load a depth medium with a cake constant from the literature: 100 g/m2 that raise R = 2.75e7 1/m eightfold
 * mean 1.9e9 m/kg, one to two orders below a fine cake.
 *
 * @param specificResistance alpha, resistance of the cake per dirt mass per area [m/kg], at least 0
 * @param mediumResistance R_m, resistance of the clean medium [1/m], above 0
 */
@Source("Ruth 1935 (Ind. Eng. Chem. 27); Geankoplis, Transport Processes and Unit Operations, chapter on filtration;"
        + " both from memory")
@Validity("incompressible cake, Darcy flow; alpha of a real cake rises with pressure")
public record CakeFiltration(double specificResistance, double mediumResistance) {
    public CakeFiltration {
        Require.notNegative("specificResistance", specificResistance, "m/kg");
        Require.positive("mediumResistance", mediumResistance, "1/m");
    }

    /**
     * A filtration run at constant pressure.
     *
     * @param area [m2], above 0
     * @param pressureDrop over cake and medium [Pa], above 0
     * @param dynamicViscosity of the filtrate [Pa s], above 0
     * @param solidsConcentration dry solids caught per volume of filtrate [kg/m3], above 0
     */
    public record Run(double area, double pressureDrop, double dynamicViscosity, double solidsConcentration) {
        public Run {
            Require.positive("area", area, "m2");
            Require.positive("pressureDrop", pressureDrop, "Pa");
            Require.positive("dynamicViscosity", dynamicViscosity, "Pa s");
            Require.positive("solidsConcentration", solidsConcentration, "kg/m3");
        }
    }

    /**
     * Constants from the straight line of t/V over V.
     *
     * @param slope [s/m6], at least 0
     * @param intercept [s/m3], above 0
     * @param run conditions of the run
     */
    public static CakeFiltration fromLine(double slope, double intercept, Run run) {
        Require.notNegative("slope", slope, "s/m6");
        Require.positive("intercept", intercept, "s/m3");
        double alpha =
                2 * slope * run.area * run.area * run.pressureDrop / (run.dynamicViscosity * run.solidsConcentration);
        return new CakeFiltration(alpha, intercept * run.area * run.pressureDrop / run.dynamicViscosity);
    }

    /**
     * Constants from readings of filtrate volume over time: least squares of t/V over V.
     *
     * @param time since the start [s], double[k], k at least 2, all above 0
     * @param volume filtrate up to then [m3], double[k], all above 0, not all equal
     * @param run conditions of the run
     */
    public static CakeFiltration fromReadings(double[] time, double[] volume, Run run) {
        Require.entries("volume", volume.length, time.length);
        Require.atLeast("number of readings", time.length, 2, "1");
        double meanX = 0;
        double meanY = 0;
        for (int i = 0; i < time.length; i++) {
            meanX += Require.positive("volume", volume[i], "m3") / time.length;
            meanY += Require.positive("time", time[i], "s") / volume[i] / time.length;
        }
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < time.length; i++) {
            sxx += (volume[i] - meanX) * (volume[i] - meanX);
            sxy += (volume[i] - meanX) * (time[i] / volume[i] - meanY);
        }
        double slope = sxy / Require.positive("spread of the volumes squared", sxx, "m6");
        return fromLine(slope, meanY - slope * meanX, run);
    }

    /** Time to collect a filtrate volume [m3, at least 0] at constant pressure [s]. */
    public double time(double volume, Run run) {
        Require.notNegative("volume", volume, "m3");
        return (halfSlope(run) * volume + intercept(run)) * volume;
    }

    /** Filtrate volume after a time [s, at least 0] at constant pressure [m3]. */
    public double volume(double time, Run run) {
        Require.notNegative("time", time, "s");
        double a = halfSlope(run);
        double b = intercept(run);
        return 2 * time / (b + Math.sqrt(b * b + 4 * a * time));
    }

    /** The same as a blocking law: n = 0 with K = alpha / R_m [m2/kg]. */
    public BlockingLaw asBlockingLaw() {
        return new BlockingLaw(0, specificResistance / mediumResistance);
    }

    private double halfSlope(Run run) {
        return run.dynamicViscosity
                * specificResistance
                * run.solidsConcentration
                / (2 * run.area * run.area * run.pressureDrop);
    }

    private double intercept(Run run) {
        return run.dynamicViscosity * mediumResistance / (run.area * run.pressureDrop);
    }
}
