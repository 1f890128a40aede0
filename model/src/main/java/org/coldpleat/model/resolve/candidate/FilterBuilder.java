package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.coldpleat.model.filter.BypassLocation;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.filter.FilterPart;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.flow.PressureDropLaw;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.model.valve.FlapValve;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.source.Source;

/**
 * Makes everything of a filter but its pleat pack from a bench sheet. A part that the sheet says nothing of is a usual one;
 * it is absent only where the sheet says so.
 */
final class FilterBuilder {
    /** Leak of a shut flap, flow times viscosity over pressure [m3]. */
    @Source("US federal specification F-F-351F: 10 mL/h at 5.1 kPa and about 4 mPa s")
    private static final double FLAP_LEAK = 2.2e-15;

    @Source("rubber is nearly incompressible; textbook value")
    private static final double RUBBER_POISSON = 0.49;

    /** Gap between pleat tips that reach the can and the can [m]: oil still passes between the tips. */
    @Source("common practice, no source")
    private static final double LEAST_GAP = 0.0002;

    private final PartReader read;
    private final FilterSizes sizes;
    private final Inputs inputs;
    private final BenchEvidence bench;
    private final List<FilterPart> usual = new ArrayList<>();

    FilterBuilder(PartReader read, FilterSizes sizes, BenchEvidence bench) {
        this.read = read;
        this.sizes = sizes;
        this.bench = bench;
        inputs = read.inputs();
    }

    /** Parts of which the sheet leaves something open, so that a usual size stands in. */
    List<FilterPart> usual() {
        return List.copyOf(usual);
    }

    /**
     * The filter around a pack of a resistance [1/m3].
     *
     * @param location place of the bypass valve inside it
     */
    FilterAssembly build(double packResistance, BypassLocation location) {
        boolean own = location == BypassLocation.BASE || location == BypassLocation.DOME;
        Optional<SpringValve> valve = own ? Optional.of(valve()) : Optional.empty();
        return new FilterAssembly(
                curve(FilterPart.INLET_HOLES).orElseGet(() -> part(FilterPart.INLET_HOLES, this::inletHoles)),
                curve(FilterPart.ANTI_DRAIN_FLAP).orElseGet(() -> part(FilterPart.ANTI_DRAIN_FLAP, this::flap)),
                measured(FilterPart.CAN_ANNULUS)
                        .map(AdditiveLaw::laminar)
                        .orElseGet(() -> part(FilterPart.CAN_ANNULUS, this::annulus)),
                packResistance,
                measured(FilterPart.TUBE_OPENINGS).orElseGet(() -> part(FilterPart.TUBE_OPENINGS, this::tubeOpenings)),
                measured(FilterPart.CENTER_TUBE).orElseGet(() -> part(FilterPart.CENTER_TUBE, this::centerTube)),
                measured(FilterPart.OUTLET_BORE).orElseGet(() -> part(FilterPart.OUTLET_BORE, this::outletBore)),
                valve,
                own ? location : BypassLocation.NONE,
                Optional.empty());
    }

    private Optional<AdditiveLaw> measured(FilterPart part) {
        return PartCurve.of(read.sheet(), part, inputs);
    }

    private Optional<PressureDropLaw> curve(FilterPart part) {
        return measured(part).map(law -> law);
    }

    private <T> T part(FilterPart part, Supplier<T> law) {
        int before = read.asked();
        T made = law.get();
        if (read.asked() > before) {
            usual.add(part);
        }
        return made;
    }

    private SpringValve valve() {
        double flowForce = inputs.constant("valve.flowForceFactor");
        return read.section("bypass")
                .map(section -> ValveBuilder.valveOrUsual(section, inputs, flowForce, bench.scale()))
                .orElseGet(() -> ValveBuilder.usual(read.sheet().path() + ".bypass", inputs, flowForce));
    }

    private PressureDropLaw inletHoles() {
        String holes = "basePlate.inletHoles";
        if (!read.present(holes)) {
            return AdditiveLaw.NONE;
        }
        OptionalDouble own = read.stated(holes + ".thickness");
        OptionalDouble plate = own.isPresent() ? own : read.stated("basePlate.thickness");
        double thickness = plate.isPresent() ? plate.getAsDouble() : read.size(holes + ".thickness");
        return Openings.hole(size(holes + ".diameter"), thickness, discharge(holes, Openings.SHORT_TUBE))
                .parallelOf(read.size(holes + ".count"));
    }

    private double discharge(String part, double usual) {
        return read.stated(part + ".dischargeCoefficient").orElse(usual);
    }

    /** A size that scales with the can. */
    private double size(String path) {
        OptionalDouble stated = read.stated(path);
        return stated.isPresent() ? stated.getAsDouble() : read.size(path, sizes.can());
    }

    private PressureDropLaw flap() {
        if (!read.present("antiDrainFlap")) {
            return AdditiveLaw.NONE;
        }
        double freeLength = read.size("antiDrainFlap.freeLength");
        double compliance = FlapValve.stripCompliance(
                freeLength, read.size("antiDrainFlap.thickness"), read.size("antiDrainFlap.modulus"), RUBBER_POISSON);
        double edge = Math.PI * size("antiDrainFlap.lipDiameter");
        return new FlapValve(compliance, read.size("antiDrainFlap.openingPressure"), freeLength / 2, edge, FLAP_LEAK);
    }

    private double annulus() {
        if (!read.present("outside")) {
            return 0;
        }
        double element = sizes.elementOutside();
        double bore = Math.max(sizes.canInside(), element + 2 * LEAST_GAP);
        double off = Math.min(1, Math.max(0, read.stated("element.eccentricity").orElse(0)));
        return Passages.annulus(bore / 2, element / 2, sizes.elementLength()).laminar() / Passages.offCenterGain(off);
    }

    private AdditiveLaw tubeOpenings() {
        if (!read.present("centerTube") || !read.present("centerTube.holes")) {
            return AdditiveLaw.NONE;
        }
        double wall = read.size("centerTube.wallThickness");
        double open = 1 - read.stated("centerTube.coveredShare").orElse(0);
        Optional<Section> louvers = read.section("centerTube.louvers");
        if (louvers.isPresent() && read.section("centerTube.holes").isEmpty()) {
            return Openings.slot(
                            inputs.value(louvers.get(), "width").orElseThrow(),
                            inputs.value(louvers.get(), "length").orElseThrow(),
                            wall,
                            discharge("centerTube.louvers", Openings.SHARP_EDGE))
                    .parallelOf(open * inputs.value(louvers.get(), "count").orElseThrow());
        }
        double diameter = read.size("centerTube.holes.diameter");
        OptionalDouble count = read.stated("centerTube.holes.count");
        return Openings.hole(diameter, wall, discharge("centerTube.holes", Openings.SHARP_EDGE))
                .parallelOf(open * (count.isPresent() ? count.getAsDouble() : usualHoles(diameter)));
    }

    private double usualHoles(double diameter) {
        double tube = Math.PI * sizes.tube() * tubeLength();
        return read.size("centerTube.holes.count", tube / (Math.PI / 4 * diameter * diameter));
    }

    private double tubeLength() {
        OptionalDouble own = read.stated("centerTube.length");
        return own.isPresent() ? own.getAsDouble() : sizes.elementLength();
    }

    private AdditiveLaw centerTube() {
        return read.present("centerTube") ? Passages.collectingTube(sizes.tube(), tubeLength()) : AdditiveLaw.NONE;
    }

    private AdditiveLaw outletBore() {
        if (!read.present("basePlate.outletBore")) {
            return AdditiveLaw.NONE;
        }
        return Openings.hole(
                outletDiameter(),
                read.size("basePlate.outletBore.length"),
                discharge("basePlate.outletBore", Openings.SHORT_TUBE));
    }

    private double outletDiameter() {
        String path = "basePlate.outletBore.diameter";
        Optional<Double> thread =
                read.section("basePlate").flatMap(plate -> plate.text("thread")).flatMap(ThreadText::nominal);
        if (read.stated(path).isPresent() || thread.isEmpty()) {
            return size(path);
        }
        return read.usual(
                path, TypicalFilter.of("basePlate.outletBore.boreOfThread").times(thread.get()));
    }
}
