package org.coldpleat.model.circuit;

import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Heat that the oil of the bearings exchanges with the metal on its way through. With {@code N = U/(rho cp q)} the oil comes
 * near to the temperature at which metal and friction hold it as {@code exp(-N x)} along its way x; its outlet is warmer than
 * its inlet by {@code [U (T_m - T_in) + Phi] e1/(rho cp q)} and its mean by the same with h in place of e1,
 * {@code e1 = (1 - exp(-N))/N}, {@code h = (1 - e1)/N}. Work object of one film.
 *
 * <p>A position f0 above 1/2 says that oil is mixed back within the film: the film then stands at
 * {@code f = f0 + (1 - f0)(2 h/e1 - 1)} between inlet and outlet.
 */
@Source("plug flow along a wall of one temperature with heat set free evenly; derived here")
@Validity("any flow from 0 on; film at rest has the temperature at which metal and friction hold it")
final class FilmExchange {
    /** N below which the series are exact to rounding [1]. */
    private static final double SMALL = 1e-3;

    private final double conductance;
    private final double position;

    /** Heat capacity flow over the film's share of the rise, {@code 1/A} in {@code T_f = T_in + A [U (T_m - T_in) + Phi]} [W/K]. */
    double carried;

    /** d(carried)/d(flow of heat capacity) [1]. */
    double slope;

    /** Rise of the outlet for each watt over that of the film [1]. */
    double outlet;

    /**
     * An exchange.
     *
     * @param conductance U from films to metal [W/K], at least 0
     * @param position f0 of films that exchange nothing with metal [1], above 0 to 1
     */
    FilmExchange(double conductance, double position) {
        this.conductance = conductance;
        this.position = position;
    }

    /** Looks at a flow of heat capacity {@code rho cp q} [W/K], at least 0. */
    void at(double capacityFlow) {
        double n = conductance / capacityFlow;
        if (conductance == 0) {
            carried = capacityFlow / position;
            slope = 1 / position;
            outlet = 1 / position;
            return;
        }
        if (capacityFlow == 0) {
            carried = conductance;
            slope = 1;
            outlet = 0;
            return;
        }
        double e1 = n < SMALL ? 1 - n / 2 + n * n / 6 - n * n * n / 24 : -Math.expm1(-n) / n;
        double h = n < SMALL ? 0.5 - n / 6 + n * n / 24 - n * n * n / 120 : (1 - e1) / n;
        double mixed = position * e1 + (1 - position) * (2 * h - e1);
        double e1Slope = n < SMALL ? -0.5 + n / 3 - n * n / 8 + n * n * n / 30 : (1 - n * e1 - e1) / n;
        double hSlope = n < SMALL ? -1.0 / 6 + n / 12 - n * n / 40 + n * n * n / 180 : (-e1Slope - h) / n;
        double mixedSlope = position * e1Slope + (1 - position) * (2 * hSlope - e1Slope);
        carried = capacityFlow / mixed;
        slope = (1 + n * mixedSlope / mixed) / mixed;
        outlet = e1 / mixed;
    }
}
