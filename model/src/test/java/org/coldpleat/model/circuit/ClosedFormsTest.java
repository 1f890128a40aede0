package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.coldpleat.model.circuit.Relief.Sensing;
import org.coldpleat.model.flow.AdditiveLaw;
import org.junit.jupiter.api.Test;

/** Filter of 5e8 and gallery of 1.5e9 1/m3, bypass at 100 kPa, relief at 400 kPa: numbers worked by hand. */
class ClosedFormsTest {
    private static final double FILTER = 5e8;
    private static final double GALLERY = 1.5e9;
    private static final Pump PUMP = Pump.unlimited(8e-6, 2e-12);

    private static OperatingPoint solve(double temperature, Relief... reliefs) {
        return new EngineCircuit(
                        PUMP,
                        List.of(reliefs),
                        AdditiveLaw.laminarOnly(FILTER),
                        Gallery.laminar(GALLERY),
                        EngineCircuitTest.OIL)
                .solve(30, temperature);
    }

    @Test
    void flowOfAShutCircuitIsTheSameAtEveryViscosity() {
        // 2.4e-4/(1 + 2e-12 x 2e9) = 2.4e-4/1.004
        double flow = ClosedForms.shutFlow(PUMP, 30, FILTER, GALLERY);
        assertEquals(2.4e-4 / 1.004, flow, 1e-18);
        for (double temperature : new double[] {250, 300, 350}) {
            assertEquals(flow, solve(temperature).filterFlow(), 1e-9 * flow);
        }
    }

    @Test
    void filterTakesItsShareOfThePumpPressure() {
        assertEquals(0.25, ClosedForms.filterShare(FILTER, GALLERY), 1e-15);
        OperatingPoint point = solve(300);
        assertEquals(0.25, point.filterDrop() / point.pumpPressure(), 1e-9);
    }

    @Test
    void reliefAtTheOutletBoundsTheDropOfTheFilter() {
        assertEquals(100e3, ClosedForms.reliefCeiling(FILTER, GALLERY, 400e3), 1e-9);
        assertEquals(100e3, solve(240, Relief.ideal(Sensing.PUMP_OUTLET, 400e3)).filterDrop(), 1e-3);
    }

    @Test
    void reliefInTheGalleryLetsTheDropFollowTheRatio() {
        assertEquals(100e3, ClosedForms.gallerySensingDrop(1.0 / 3, 300e3), 1e-9);
        assertEquals(100e3, solve(240, Relief.ideal(Sensing.GALLERY, 300e3)).filterDrop(), 1e-3);
    }

    @Test
    void ratioThatOpensTheBypassIsInfiniteWhenTheReliefOpensFirst() {
        assertEquals(1.0 / 3, ClosedForms.criticalRatio(100e3, 400e3), 1e-15);
        assertEquals(Double.POSITIVE_INFINITY, ClosedForms.criticalRatio(100e3, 100e3));
        assertEquals(Double.POSITIVE_INFINITY, ClosedForms.criticalRatio(100e3, 90e3));
    }

    @Test
    void bypassOpensAtItsViscosity() {
        assertEquals(1, ClosedForms.thresholdViscosity(100e3, FILTER, 2e-4), 1e-12);
    }
}
