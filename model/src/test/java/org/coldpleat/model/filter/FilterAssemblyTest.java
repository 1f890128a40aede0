package org.coldpleat.model.filter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.coldpleat.model.flow.AdditiveLaw;
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

    @Test
    void packAloneObeysDarcysLaw() {
        FilterState state = FilterAssembly.ofPack(4e8).solve(2e-4, new Fluid(0.5, 870));
        assertEquals(0.5 * 4e8 * 2e-4, state.totalDrop(), 1e-9);
        assertEquals(0.5 * 4e8, state.slope(), 1e-4);
        assertEquals(2e-4, state.mediumFlow());
    }

    @Test
    void coldElementRaisesTheDropOfThePackAlone() {
        Fluid warm = new Fluid(0.1, 860);
        Fluid cold = new Fluid(0.7, 880);
        double alike = PLAIN.law().pressureDrop(1e-4, warm);
        assertEquals(alike + 0.6 * 4e8 * 1e-4, PLAIN.law(cold).pressureDrop(1e-4, warm), 1e-9 * alike);
    }

    @Test
    void lawIsTheDropOfTheSolvedState() {
        Fluid oil = new Fluid(0.3, 870);
        for (FilterAssembly filter : ALL) {
            FilterState state = filter.solve(3e-4, oil);
            assertTrue(state.totalDrop() > 1e3);
            assertEquals(state.totalDrop(), filter.law().pressureDrop(3e-4, oil));
            assertEquals(state.slope(), filter.law().slope(3e-4, oil));
            assertEquals(state.slope(), filter.law().at(3e-4, oil).slope());
        }
    }

    @Test
    void openValveLeavesThePackTheDifferenceAtWhichItPassesTheRest() {
        // a pack of 1e9 1/m3 in oil of 1 Pa s beside a valve: y = 1e9 (Q - V(y)), found here by halving
        Fluid oil = new Fluid(1, 870);
        for (double flow : new double[] {0.5e-4, 1.5e-4, 8e-4}) {
            double low = 0;
            double high = 1e9 * flow;
            for (int i = 0; i < 80; i++) {
                double y = (low + high) / 2;
                if (1e9 * (flow - VALVE.flowRate(y, oil)) > y) {
                    low = y;
                } else {
                    high = y;
                }
            }
            FilterAssembly pack = FilterAssembly.ofPack(1e9);
            FilterState base = pack.withBypass(BypassLocation.BASE, VALVE).solve(flow, oil);
            FilterState block = pack.withBypass(BypassLocation.BLOCK, VALVE).solve(flow, oil);
            assertEquals(low, base.totalDrop(), 1e-10 * low);
            assertEquals(low, block.totalDrop(), 1e-10 * low);
            assertEquals(VALVE.flowRate(low, oil), base.bypassFlow(), 1e-8 * flow);
            assertEquals(VALVE.flowRate(low, oil), block.bypassFlow(), 1e-8 * flow);
        }
    }

    @Test
    void bothValvesOpenAtOnceEachUnderItsOwnDifference() {
        Fluid oil = new Fluid(1, 870);
        FilterState state = ALL[5].solve(1e-3, oil);
        assertTrue(state.elementValve().isOpen() && state.blockValve().isOpen());
        assertEquals(
                VALVE.flowRate(state.elementValve().pressureDifference(), oil),
                state.elementValve().flowRate(),
                1e-10);
        assertEquals(BLOCK.flowRate(state.totalDrop(), oil), state.blockValve().flowRate(), 1e-10);
    }

    @Test
    void farEndValveChargesItsFlowWithAnnulusAndTube() {
        // parts of one laminar passage a each in annulus and tube: medium flow counts a third, valve flow a half of
        // both
        FilterAssembly filter = new FilterAssembly(
                AdditiveLaw.NONE,
                AdditiveLaw.NONE,
                3e7,
                4e8,
                AdditiveLaw.NONE,
                new AdditiveLaw(6e7, 5e9),
                AdditiveLaw.NONE,
                Optional.of(VALVE),
                BypassLocation.DOME,
                Optional.empty());
        Fluid oil = new Fluid(1, 870);
        FilterState state = filter.solve(5e-4, oil);
        double q = state.mediumFlow();
        double v = state.bypassFlow();
        assertTrue(v > 1e-5);
        assertEquals(3e7 * (q / 3 + v / 2), state.partDrop(FilterPart.CAN_ANNULUS), 1e-6);
        assertEquals(6e7 * (q / 3 + v / 2) + 870 * 5e9 * 5e-4 * 5e-4, state.partDrop(FilterPart.CENTER_TUBE), 1e-6);
        assertEquals(
                4e8 * q + 9e7 * (q / 3 + v / 2) + 870 * 5e9 * 5e-4 * 5e-4, state.totalDrop(), 1e-9 * state.totalDrop());
    }

    @Test
    void threadEndValveLeavesTheMomentumOfTheTubeToTheMediumFlow() {
        FilterAssembly filter = new FilterAssembly(
                AdditiveLaw.NONE,
                AdditiveLaw.NONE,
                0,
                4e8,
                AdditiveLaw.NONE,
                new AdditiveLaw(0, 5e9),
                AdditiveLaw.NONE,
                Optional.of(VALVE),
                BypassLocation.BASE,
                Optional.empty());
        FilterState state = filter.solve(5e-4, new Fluid(1, 870));
        double q = state.mediumFlow();
        assertTrue(q < 4e-4);
        assertEquals(870 * 5e9 * q * q, state.partDrop(FilterPart.CENTER_TUBE), 1e-6);
        assertEquals(4e8 * q + 870 * 5e9 * q * q, state.totalDrop(), 1e-9 * state.totalDrop());
    }

    @Test
    void withoutBypassNothingGoesRoundTheMedium() {
        Fluid oil = new Fluid(1, 870);
        for (FilterAssembly filter : ALL) {
            assertEquals(PLAIN.solve(8e-4, oil), filter.withoutBypass().solve(8e-4, oil));
        }
    }

    @Test
    void openedFilterStaysOpenDownToTheClosingPressure() {
        SpringValve sticky = new SpringValve(100e3, 11e-3, 1200, 3e-3, 1, 0.62, AdditiveLaw.NONE, 0, 0, 80e3);
        Fluid oil = new Fluid(1, 870);
        for (BypassLocation place : new BypassLocation[] {BypassLocation.BASE, BypassLocation.BLOCK}) {
            FilterAssembly filter = FilterAssembly.ofPack(1e9).withBypass(place, sticky);
            assertFalse(filter.solve(0.9e-4, oil).isBypassOpen());
            assertTrue(filter.afterOpening().solve(0.9e-4, oil).isBypassOpen());
            assertFalse(filter.afterOpening().solve(0.79e-4, oil).isBypassOpen());
        }
    }

    @Test
    void anotherPackKeepsTheRestOfTheFilter() {
        Fluid oil = new Fluid(0.5, 870);
        FilterAssembly loaded = ALL[4].withElementResistance(1.2e9);
        assertEquals(ALL[4], loaded.withElementResistance(4e8));
        double extra = 0.5 * 0.8e9 * 1e-5;
        assertEquals(
                extra,
                loaded.solve(1e-5, oil).totalDrop() - ALL[4].solve(1e-5, oil).totalDrop(),
                1e-6 * extra);
    }
}
