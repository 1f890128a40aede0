package org.coldpleat.model.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import org.coldpleat.shared.notice.Notice;
import org.junit.jupiter.api.Test;

class PropertiesTest {
    @Test
    void javadocExampleOfDensity() {
        assertEquals(884.07, new MpmsDensity(850).density(233.15), 0.005);
    }

    @Test
    void densityReadAtAnotherTemperatureIsBroughtBack() {
        for (double t : new double[] {233.15, 288.15, 288.71, 313.15, 373.15}) {
            MpmsDensity law = new MpmsDensity(873);
            assertEquals(873, MpmsDensity.through(law.density(t), t).referenceDensity(), 1e-9);
        }
    }

    @Test
    void expansionPerKelvinIsNotMistakenForPerDegreeFahrenheit() {
        // 0.6278 per kelvin is 0.34878 per degree Fahrenheit (API MPMS 11.1): taken per kelvin that gives 834.2 at 60 C
        assertEquals(821.5, new MpmsDensity(850).density(333.15), 0.1);
        assertEquals(0.6278, -slope(new MpmsDensity(850), 288.15), 1e-6);
    }

    @Test
    void densityOfAnotherLiquidIsWrongUse() {
        assertThrows(IllegalArgumentException.class, () -> new MpmsDensity(0.85));
        assertThrows(IllegalArgumentException.class, () -> MpmsDensity.through(1300, 288.15));
    }

    @Test
    void javadocExampleOfHeat() {
        assertEquals(1817, new CragoeHeat(0.86).heatCapacity(273.15), 0.5);
        assertEquals(0.1363, new CragoeHeat(0.86).conductivity(273.15), 5e-5);
    }

    @Test
    void everyFaultHasATextWithItsPlaceholders() {
        ResourceBundle texts = ResourceBundle.getBundle(Notice.class.getPackageName() + ".notices", Locale.ROOT);
        for (OilFault fault : OilFault.values()) {
            String text = new MessageFormat(texts.getString(fault.code()), Locale.ROOT)
                    .format(new Object[] {"A", "B", "C", "D", "E", "F"});
            assertEquals(-1, text.indexOf('{'), text);
        }
    }

    private static double slope(MpmsDensity law, double temperature) {
        return (law.density(temperature + 0.01) - law.density(temperature - 0.01)) / 0.02;
    }
}
