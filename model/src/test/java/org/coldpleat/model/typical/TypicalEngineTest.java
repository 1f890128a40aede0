package org.coldpleat.model.typical;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.junit.jupiter.api.Test;

class TypicalEngineTest {
    private static final Map<String, Kind> OF_ALL = new LinkedHashMap<>(Map.ofEntries(
            Map.entry("pumpDisplacement", Kind.DISPLACEMENT),
            Map.entry("pumpSlip", Kind.SLIP),
            Map.entry("suctionBore", Kind.LENGTH),
            Map.entry("suctionLength", Kind.LENGTH),
            Map.entry("reliefOpening", Kind.GAUGE_PRESSURE),
            Map.entry("reliefOverride", Kind.RATIO),
            Map.entry("hotIdlePressure", Kind.GAUGE_PRESSURE),
            Map.entry("hotIdleSpeed", Kind.ROTATION),
            Map.entry("coldIdleSpeed", Kind.ROTATION),
            Map.entry("crankingSpeed", Kind.ROTATION),
            Map.entry("drivingSpeed", Kind.ROTATION),
            Map.entry("bearingShare", Kind.FRACTION),
            Map.entry("jetBore", Kind.LENGTH),
            Map.entry("jetLength", Kind.LENGTH),
            Map.entry("sideFlow", Kind.DISPLACEMENT),
            Map.entry("dissipation", Kind.VOLUME),
            Map.entry("filmToMetal", Kind.HEAT_CONDUCTANCE),
            Map.entry("galleryBore", Kind.LENGTH),
            Map.entry("galleryLengthPerCylinder", Kind.LENGTH),
            Map.entry("galleryVolume", Kind.VOLUME),
            Map.entry("oilFill", Kind.VOLUME),
            Map.entry("oilWarmsIn", Kind.DURATION),
            Map.entry("metalHeatCapacity", Kind.HEAT_CAPACITY),
            Map.entry("metalToAmbient", Kind.HEAT_CONDUCTANCE),
            Map.entry("oilToAmbient", Kind.HEAT_CONDUCTANCE),
            Map.entry("heatColdIdle", Kind.POWER),
            Map.entry("heatDriving", Kind.POWER),
            Map.entry("dirtRate", Kind.MASS_RATE)));

    @Test
    void everyKindHasEveryQuantityWithBandAndSource() {
        assertTrue(TypicalEngine.kinds().size() >= 10, TypicalEngine.kinds()::toString);
        for (String kind : TypicalEngine.kinds()) {
            TypicalEngine engine = new TypicalEngine(kind, 2);
            OF_ALL.forEach((quantity, of) -> {
                Measured value = engine.of(quantity, of);
                assertTrue(value.low() > 0 && value.low() < value.high(), kind + " " + quantity + " " + value);
                assertTrue(value.low() <= value.value() && value.value() <= value.high(), kind + " " + quantity);
                assertFalse(engine.row(quantity).source().isBlank(), quantity);
                assertTrue("abcd".contains(engine.row(quantity).sureness()), quantity);
            });
        }
    }

    @Test
    void pumpGrowsAlittleLessThanTheEngine() {
        double one = new TypicalEngine("car gasoline", 1)
                .of("pumpDisplacement", Kind.DISPLACEMENT)
                .value();
        double two = new TypicalEngine("car gasoline", 2)
                .of("pumpDisplacement", Kind.DISPLACEMENT)
                .value();
        assertEquals(4.7e-6, one, 1e-12);
        assertEquals(Math.pow(2, 0.9), two / one, 1e-12);
        assertEquals(8.8e-6, two, 0.05e-6);
    }

    @Test
    void factorsAreBandsOfNinetyFiveInAHundred() {
        Measured pump = new TypicalEngine("car gasoline", 2).of("pumpDisplacement", Kind.DISPLACEMENT);
        assertEquals(pump.value() * 1.6, pump.high(), 1e-9 * pump.value());
        Measured share = new TypicalEngine("car gasoline", 2).of("bearingShare", Kind.FRACTION);
        assertEquals(0.15, share.low(), 1e-12);
        assertEquals(0.70, share.high(), 1e-12);
    }

    @Test
    void unknownNamesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TypicalEngine("steam", 2));
        assertThrows(IllegalArgumentException.class, () -> new TypicalEngine("car gasoline", 0));
        TypicalEngine utility = new TypicalEngine("utility", 0.5);
        assertFalse(utility.knows("coolantHeatCapacity"));
        assertThrows(IllegalArgumentException.class, () -> utility.of("radiator", Kind.HEAT_CONDUCTANCE));
    }
}
