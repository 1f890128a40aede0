package org.coldpleat.validation.conservation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.EngineCircuit;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Relief;
import org.coldpleat.model.circuit.Relief.Sensing;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.valve.FlapValve;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.validation.benchmark.InventedOil;

/**
 * A random engine and filter of plausible sizes, from mower to truck (ranges: common practice, no source), with every
 * kind of relief, bypass and gallery; a random seed alone decides it.
 *
 * @param circuit engine
 * @param filter filter in it
 * @param speed of the pump [rev/s]
 * @param temperature of the sump [K]
 */
record RandomEngine(EngineCircuit circuit, FilterAssembly filter, double speed, double temperature) {
    static RandomEngine of(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double size = log(random, 0.15, 5);
        FilterAssembly filter = filter(random, size);
        double hot = log(random, 7, 16);
        InventedOil oil = new InventedOil(hot * uniform(random, 5, 11), hot);
        Pump pump = new Pump(
                7e-6 * size * uniform(random, 0.5, 2),
                random.nextInt(4) == 0 ? 0 : log(random, 1e-13, 2e-11) * size,
                random.nextInt(2) == 0 ? 0 : log(random, 1e7, 3e9) / size,
                uniform(random, 50e3, 95e3));
        EngineCircuit circuit =
                new EngineCircuit(pump, reliefs(random, size), filter.law(), gallery(random, size), oil);
        return new RandomEngine(circuit, filter, log(random, 1, 120), uniform(random, 233, 423));
    }

    private static FilterAssembly filter(SplittableRandom random, double size) {
        boolean bare = random.nextInt(6) == 0;
        FilterAssembly filter = bare
                ? FilterAssembly.ofPack(log(random, 3e7, 2e10) / size)
                : new FilterAssembly(
                        Openings.hole(log(random, 3e-3, 8e-3), 3e-3, Openings.SHORT_TUBE)
                                .parallelOf(4 + random.nextInt(5)),
                        random.nextBoolean()
                                ? AdditiveLaw.NONE
                                : new FlapValve(log(random, 5e-8, 1e-6), uniform(random, 0, 3e3), 1.5e-3, 0.12, 1e-15),
                        Passages.annulus(32e-3, 32e-3 - log(random, 0.7e-3, 4e-3), 70e-3)
                                .laminar(),
                        log(random, 3e7, 1e10) / size,
                        Openings.slot(0.8e-3, 12e-3, 0.6e-3, Openings.SHARP_EDGE)
                                .parallelOf(10 + random.nextInt(50)),
                        Passages.collectingTube(log(random, 10e-3, 40e-3), 70e-3),
                        Openings.hole(log(random, 10e-3, 20e-3), 25e-3, Openings.SHORT_TUBE),
                        Optional.empty(),
                        BypassLocation.NONE,
                        Optional.empty());
        BypassLocation location = switch (random.nextInt(4)) {
            case 0 -> BypassLocation.BASE;
            case 1 -> BypassLocation.DOME;
            case 2 -> BypassLocation.BLOCK;
            default -> BypassLocation.NONE;
        };
        if (location != BypassLocation.NONE) {
            filter = filter.withBypass(location, bypass(random));
        }
        return random.nextInt(5) == 0 ? filter.withBypass(BypassLocation.BLOCK, bypass(random)) : filter;
    }

    private static SpringValve bypass(SplittableRandom random) {
        double opening = uniform(random, 40e3, 250e3);
        return new SpringValve(
                opening,
                log(random, 6e-3, 20e-3),
                log(random, 200, 8000),
                log(random, 0.5e-3, 6e-3),
                uniform(random, 0.3, 1),
                SpringValve.CURTAIN_DISCHARGE,
                random.nextBoolean() ? AdditiveLaw.NONE : Openings.hole(8e-3, 2e-3, Openings.SHORT_TUBE),
                random.nextBoolean() ? 0 : log(random, 1e-18, 1e-14),
                random.nextBoolean() ? 0 : uniform(random, 0, 0.3),
                opening);
    }

    private static List<Relief> reliefs(SplittableRandom random, double size) {
        List<Relief> reliefs = new ArrayList<>();
        int count = random.nextInt(3);
        for (int i = 0; i < count; i++) {
            Sensing sensing = random.nextBoolean() ? Sensing.PUMP_OUTLET : Sensing.GALLERY;
            double set = uniform(random, 200e3, 1000e3);
            reliefs.add(
                    switch (random.nextInt(3)) {
                        case 0 -> Relief.ideal(sensing, set);
                        case 1 -> Relief.linear(sensing, set, log(random, 1e6, 2e9) / size);
                        default ->
                            Relief.valve(
                                    sensing, set, SpringValve.disc(set, log(random, 5e-3, 15e-3), 8000, 3e-3, 1e-17));
                    });
        }
        return reliefs;
    }

    private static Gallery gallery(SplittableRandom random, double size) {
        boolean warm = random.nextBoolean();
        Bearings bearings = new Bearings(
                size / log(random, 3e9, 1e13),
                random.nextInt(3) == 0 ? log(random, 1e-8, 1e-5) * size : 0,
                warm ? log(random, 1e-3, 1) * size : 0,
                warm ? log(random, 0.1, 50) : 0,
                warm ? uniform(random, 0.3, 1) : 0);
        List<Restrictor> restrictors = new ArrayList<>();
        int kinds = random.nextInt(3);
        for (int i = 0; i < kinds; i++) {
            restrictors.add(new Restrictor(
                    Openings.hole(log(random, 0.8e-3, 3e-3), uniform(random, 0, 8e-3), Openings.SHORT_TUBE),
                    uniform(random, 0.2, 8),
                    random.nextInt(3) == 0 ? uniform(random, 100e3, 250e3) : 0));
        }
        return new Gallery(random.nextBoolean() ? 0 : log(random, 1e6, 3e9) / size, bearings, restrictors);
    }

    private static double uniform(SplittableRandom random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static double log(SplittableRandom random, double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }
}
