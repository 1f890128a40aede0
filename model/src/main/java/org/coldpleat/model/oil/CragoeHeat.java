package org.coldpleat.model.oil;

import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Heat capacity and conductivity of petroleum oils:
 * {@code cp = (1684.8 + 3.391 t) / sqrt(s)}, {@code k = 0.11726 (1 - 0.00054 t) / s}, t in degrees C.
 *
 * <p>Against tables of engine oil and synthetic base oil: heat capacity within 5 %, conductivity within 15 %.
 *
 * <p>Worked example: s = 0.86 gives 1817 J/(kg K) and 0.1363 W/(m K) at 0 degrees C.
 *
 * @param relativeDensity s, density at 15.6 degrees C over that of water, 999.0 kg/m3 [1], above 0
 */
@Source("C. S. Cragoe 1929, Thermal Properties of Petroleum Products, NBS Misc. Publ. 97; coefficients from memory")
@Validity("petroleum oils, about 0..200 degrees C; goes on smoothly outside")
public record CragoeHeat(double relativeDensity) {
    private static final double ICE_POINT = 273.15;
    private static final double SIXTY_FAHRENHEIT = 288.7056;
    private static final double WATER_DENSITY = 999.0;

    public CragoeHeat {
        Require.positive("relativeDensity", relativeDensity, "");
    }

    /** The law for an oil of known density. */
    public static CragoeHeat of(MpmsDensity density) {
        return new CragoeHeat(density.density(SIXTY_FAHRENHEIT) / WATER_DENSITY);
    }

    /** Specific heat capacity [J/(kg K)] at a temperature [K]. */
    public double heatCapacity(double temperature) {
        return (1684.8 + 3.391 * (temperature - ICE_POINT)) / Math.sqrt(relativeDensity);
    }

    /** Heat conductivity [W/(m K)] at a temperature [K]. */
    public double conductivity(double temperature) {
        return 0.11726 * (1 - 0.00054 * (temperature - ICE_POINT)) / relativeDensity;
    }
}
