package org.coldpleat.model.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coldpleat.model.circuit.Pump.DeliveryPoint;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.PilotedLaw;
import org.junit.jupiter.api.Test;

class PumpTest {
    /** 8 cm3/rev, slip 2e-12 m3, pickup 4e8 1/m3 under 90 kPa. */
    private static final Pump PUMP = new Pump(8e-6, 2e-12, 4e8, 90e3);

    private static final Fluid OIL = new Fluid(0.05, 870);

    @Test
    void deliveryIsDisplacementLessSlip() {
        // 8e-6 x 30 - 2e-12 x 500e3/0.05 = 2.4e-4 - 2e-5
        assertEquals(2.2e-4, PUMP.delivery(30, 500e3, 0.05), 1e-18);
        assertEquals(-2e-12 / 0.05, PUMP.deliverySlope(30, 500e3, 0.05), 1e-25);
        assertFalse(PUMP.isSuctionLimited(30, 500e3, 0.05));
    }

    @Test
    void thickOilIsLimitedByThePickup() {
        // 90 kPa/(2 Pa s x 4e8 1/m3)
        assertEquals(1.125e-4, PUMP.suctionLimit(2), 1e-18);
        assertEquals(1.125e-4, PUMP.delivery(30, 500e3, 2), 1e-18);
        assertEquals(0, PUMP.deliverySlope(30, 500e3, 2));
        assertTrue(PUMP.isSuctionLimited(30, 500e3, 2));
    }

    @Test
    void pumpThatGetsJustWhatItDisplacesIsNotLimited() {
        // powers of two, so that both sides are exact: 2^-12 m3/rev x 32 rev/s and 2^16/(1 x 2^23) m3/s
        Pump pump = new Pump(Math.pow(2, -12), 0, Math.pow(2, 23), Math.pow(2, 16));
        assertEquals(pump.suctionLimit(1), pump.delivery(32, 0, 1));
        assertFalse(pump.isSuctionLimited(32, 0, 1));
        assertTrue(pump.isSuctionLimited(33, 0, 1));
    }

    @Test
    void pumpWithoutPickupResistanceIsNeverLimited() {
        assertEquals(Double.POSITIVE_INFINITY, Pump.unlimited(8e-6, 2e-12).suctionLimit(1e3));
    }

    @Test
    void twoDeliveryPointsGiveThePumpBack() {
        // at 0.05 Pa s: 8e-6 n - 4e-11 p
        DeliveryPoint slow = new DeliveryPoint(10, 200e3, 8e-5 - 8e-6);
        DeliveryPoint fast = new DeliveryPoint(60, 500e3, 4.8e-4 - 2e-5);
        for (Pump pump : new Pump[] {Pump.fromDelivery(slow, fast, 0.05), Pump.fromDelivery(fast, slow, 0.05)}) {
            assertEquals(8e-6, pump.displacement(), 1e-18);
            assertEquals(2e-12, pump.slip(), 1e-24);
        }
    }

    @Test
    void pointsOfAPumpWithoutSlipAreAccepted() {
        Pump pump = Pump.fromDelivery(
                new DeliveryPoint(8, 1024, 8.0 / 1024), new DeliveryPoint(16, 4096, 16.0 / 1024), 0.05);
        assertEquals(1.0 / 1024, pump.displacement());
        assertEquals(0, pump.slip());
    }

    @Test
    void pointsThatNeedNegativeSlipOrSayTheSameTwiceAreRefused() {
        DeliveryPoint first = new DeliveryPoint(8, 1024, 8.0 / 1024);
        assertThrows(
                IllegalArgumentException.class,
                () -> Pump.fromDelivery(first, new DeliveryPoint(16, 4096, 16.1 / 1024), 0.05));
        IllegalArgumentException thrown = assertThrows(
                IllegalArgumentException.class,
                () -> Pump.fromDelivery(first, new DeliveryPoint(16, 2048, 15.0 / 1024), 0.05));
        // both at 1024/8 Pa s
        assertTrue(thrown.getMessage().contains("128.0"), thrown.getMessage());
    }

    @Test
    void pointsThatNeedABackwardPumpAreRefused() {
        // less oil at more speed and hardly more pressure
        assertThrows(
                IllegalArgumentException.class,
                () -> Pump.fromDelivery(
                        new DeliveryPoint(10, 100e3, 1e-4), new DeliveryPoint(20, 110e3, 0.5e-4), 0.05));
    }

    @Test
    void reliefWithOverrideDumpsInProportionAboveItsSetting() {
        LinearOverride relief = new LinearOverride(350e3, 2e8);
        assertEquals(new PilotedLaw.Piloted(0, 0, 0), relief.at(340e3, 500e3, OIL));
        assertEquals(2.5e-4, relief.at(400e3, 500e3, OIL).flowRate(), 1e-18);
        assertEquals(0, relief.at(350e3, 500e3, OIL).byOpening());
        assertEquals(0.5e-8, relief.at(350.001e3, 500e3, OIL).byOpening(), 1e-22);
        assertEquals(0, relief.at(400e3, 500e3, OIL).byDriving());
    }
}
