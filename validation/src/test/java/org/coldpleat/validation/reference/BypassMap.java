package org.coldpleat.validation.reference;

import java.util.Optional;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.validation.benchmark.FilterOnEngine;

/**
 * Share of the oil that goes unfiltered over temperature and speed.
 *
 * @param temperatures [K], double[nt]
 * @param speeds of the pump [rev/s], double[ns]
 * @param bypassShare [1], double[nt][ns]; NaN where there is no answer
 * @param valveRatio difference over opening pressure of the leading valve [1], double[nt][ns]; above 1 is open
 */
public record BypassMap(double[] temperatures, double[] speeds, double[][] bypassShare, double[][] valveRatio) {
    /** Computes the map; each cell starts from its neighbor. */
    public static BypassMap of(FilterOnEngine engine, double[] temperatures, double[] speeds) {
        Require.positive("number of temperatures", temperatures.length, "1");
        Require.positive("number of speeds", speeds.length, "1");
        double[][] share = new double[temperatures.length][speeds.length];
        double[][] ratio = new double[temperatures.length][speeds.length];
        for (int j = 0; j < speeds.length; j++) {
            Optional<FilterOnEngine.State> near = Optional.empty();
            for (int i = 0; i < temperatures.length; i++) {
                FilterOnEngine.State state = engine.solve(speeds[j], temperatures[i], near);
                boolean found = state.isAnswer();
                share[i][j] = found ? state.filter().bypassShare() : Double.NaN;
                ratio[i][j] = found ? state.filter().leadingValve().ratio() : Double.NaN;
                near = found ? Optional.of(state) : near;
            }
        }
        return new BypassMap(temperatures.clone(), speeds.clone(), share, ratio);
    }
}
