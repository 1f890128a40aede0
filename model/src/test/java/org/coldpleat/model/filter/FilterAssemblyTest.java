package org.coldpleat.model.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.valve.FlapValve;
import org.coldpleat.model.valve.SpringValve;
import org.junit.jupiter.api.Test;

class FilterAssemblyTest {
    private static final SpringValve VALVE = SpringValve.disc(100e3, 11e-3, 1200, 3e-3, 1e-16);
    private static final SpringValve BLOCK = SpringValve.disc(140e3, 14e-3, 1500, 4e-3, 1e-16);
    private static final FilterAssembly PLAIN = new FilterAssembly(
            Openings.hole(5e-3, 3e-3, Openings.SHORT_TUBE).parallelOf(6),
            new FlapValve(3e-7, 800, 1.5e-3, 0.12, 1e-15),
            Passages.annulus(32.5e-3, 31e-3, 70e-3).laminar(),
            4e8,
            Openings.slot(0.8e-3, 12e-3, 0.6e-3, Openings.SHARP_EDGE).parallelOf(40),
            Passages.collectingTube(14e-3, 70e-3),
            Openings.hole(14e-3, 25e-3, Openings.SHORT_TUBE),
            Optional.empty(),
            BypassLocation.NONE,
            Optional.empty());
    private static final FilterAssembly[] ALL = {
        PLAIN,
        PLAIN.withBypass(BypassLocation.BASE, VALVE),
        PLAIN.withBypass(BypassLocation.DOME, VALVE),
        PLAIN.withBypass(BypassLocation.BLOCK, BLOCK),
        PLAIN.withBypass(BypassLocation.DOME, VALVE).withBypass(BypassLocation.BLOCK, BLOCK),
        PLAIN.withBypass(BypassLocation.BASE, VALVE).withBypass(BypassLocation.BLOCK, BLOCK)
    };

    @Test
    void balancesHoldInEveryTopology() {
        for (FilterAssembly filter : ALL) {
            for (double mu = 0.005; mu < 30; mu *= 2) {
                for (double q = 1e-7; q < 3e-3; q *= 2) {
                    FilterState state = filter.solve(q, new Fluid(mu, 870), new Fluid(1.3 * mu, 875));
                    assertTrue(state.converged(), () -> "not converged");
                    assertTrue(state.flowResidual() < 1e-12, () -> "flow " + state);
                    assertTrue(state.pressureResidual() < 1e-11, () -> "pressure " + state);
                }
            }
        }
    }

    @Test
    void elementValveSeesWhatLiesBetweenItsPorts() {
        Fluid oil = new Fluid(0.8, 875);
        FilterState base = ALL[1].solve(3e-4, oil);
        double stretch = base.partDrop(FilterPart.CAN_ANNULUS)
                + base.partDrop(FilterPart.PLEAT_PACK)
                + base.partDrop(FilterPart.TUBE_OPENINGS)
                + base.partDrop(FilterPart.CENTER_TUBE);
        assertEquals(stretch, base.elementValve().pressureDifference(), 1e-10 * stretch);

        FilterState dome = ALL[2].solve(3e-4, oil);
        double passages = 0.8 * (PLAIN.annulusResistance() + PLAIN.centerTube().laminar());
        double expected = dome.partDrop(FilterPart.PLEAT_PACK)
                + dome.partDrop(FilterPart.TUBE_OPENINGS)
                - passages * (dome.mediumFlow() / 6 + dome.bypassFlow() / 2);
        assertEquals(expected, dome.elementValve().pressureDifference(), 1e-9 * expected);

        FilterState block = ALL[3].solve(3e-4, oil);
        assertEquals(block.totalDrop(), block.blockValve().pressureDifference());
    }

    @Test
    void slopeIsTheDerivativeOfTheDrop() {
        for (FilterAssembly filter : ALL) {
            for (double q = 1e-6; q < 2e-3; q *= 1.13) {
                Fluid oil = new Fluid(0.3, 870);
                double h = 1e-6 * q;
                Drop at = filter.law().at(q, oil);
                double numeric =
                        (filter.law().pressureDrop(q + h, oil) - filter.law().pressureDrop(q - h, oil)) / (2 * h);
                assertEquals(numeric, at.slope(), 1e-4 * numeric);
            }
        }
    }

    @Test
    void dropIsZeroAtZeroFlowAndFlowsBackward() {
        for (FilterAssembly filter : ALL) {
            Fluid oil = new Fluid(0.3, 870);
            assertEquals(0, filter.solve(0, oil).totalDrop());
            FilterState back = filter.solve(-1e-4, oil);
            assertTrue(back.converged() && back.totalDrop() < 0 && !back.isBypassOpen());
        }
    }

    @Test
    void openingIsJudgedByTheDifferenceAlone() {
        Fluid oil = new Fluid(1, 870);
        FilterAssembly filter = FilterAssembly.ofPack(1e9).withBypass(BypassLocation.BASE, VALVE);
        assertFalse(filter.solve(0.9999e-4, oil).isBypassOpen());
        assertTrue(filter.solve(1.002e-4, oil).isBypassOpen());
    }

    @Test
    void aValveNeedsAPlaceInTheElement() {
        assertThrows(IllegalArgumentException.class, () -> PLAIN.withBypass(BypassLocation.NONE, VALVE));
    }
}
