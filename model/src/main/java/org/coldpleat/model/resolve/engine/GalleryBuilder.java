package org.coldpleat.model.resolve.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.GalleryFromBearings;
import org.coldpleat.model.circuit.GalleryFromBearings.BearingGroup;
import org.coldpleat.model.circuit.GalleryFromHotReading;
import org.coldpleat.model.circuit.GroovedBearing;
import org.coldpleat.model.circuit.Pump;
import org.coldpleat.model.circuit.Restrictor;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Lubricant;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.flow.Passages;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Makes the gallery of an engine from a hot reading, from passages, from bearings, or from the last two together. */
final class GalleryBuilder {
    /** Share of the oil that goes through bearings where it is asked for as typical [1]. */
    @Source("common practice, no source: 30 to 90 % from jet-rich to plain galleries")
    private static final double[] TYPICAL_BEARING_SHARE = {0.3, 0.9};

    /** Bore and length of a jet where a hot reading states none [m]. */
    @Source("common practice, no source")
    private static final double COMMON_JET_BORE = 1.5e-3;

    @Source("common practice, no source")
    private static final double COMMON_JET_LENGTH = 3e-3;

    private GalleryBuilder() {}

    /**
     * A gallery in computing form.
     *
     * @param gallery gallery
     * @param laminarShare laminar share of its drop at the hot reading [1], if there is one
     */
    record Built(Gallery gallery, OptionalDouble laminarShare) {}

    static Built gallery(Section section, Pump pump, double turns, Lubricant oil, Inputs inputs) {
        double series = passageResistance(section, inputs);
        Bearings bearings = bearings(section, turns, inputs);
        Optional<Section> reading = section.section("hotReading");
        if (reading.isPresent()) {
            GalleryFromHotReading.Resolved resolved = hotReading(
                            reading.get(), series, bearings, pump, turns, oil, inputs)
                    .resolve(oil);
            return new Built(resolved.gallery(), OptionalDouble.of(resolved.laminarShare()));
        }
        List<Restrictor> restrictors = new ArrayList<>();
        double gaps = 0;
        for (Section passage : section.sections("passages")) {
            AdditiveLaw one = bore(passage, "bore", "length", inputs);
            double count = inputs.valueOr(passage, "count", 1);
            if (passage.choice("kind").filter("bearing"::equals).isPresent()) {
                gaps += count / one.laminar();
            } else {
                restrictors.add(new Restrictor(one, count, inputs.valueOr(passage, "checkPressure", 0)));
            }
        }
        Bearings all = new Bearings(
                bearings.conductance() + gaps,
                bearings.sideFlow(),
                bearings.friction(),
                bearings.heatLoss(),
                bearings.filmPosition());
        return new Built(new Gallery(series, all, restrictors), OptionalDouble.empty());
    }

    private static GalleryFromHotReading hotReading(
            Section reading, double series, Bearings habits, Pump pump, double turns, Lubricant oil, Inputs inputs) {
        double pressure = inputs.value(reading, "pressure").orElseThrow();
        double temperature = inputs.value(reading, "temperature").orElseThrow();
        double speed = inputs.value(reading, "speed").orElseThrow() * turns;
        double viscosity = oil.at(temperature).dynamicViscosity();
        double flow = inputs.value(reading, "flow").orElseGet(() -> pump.delivery(speed, pressure, viscosity));
        AdditiveLaw jet = Openings.hole(
                orCommon(reading, "jetBore", COMMON_JET_BORE, inputs),
                orCommon(reading, "jetLength", COMMON_JET_LENGTH, inputs),
                Openings.SHORT_TUBE);
        return new GalleryFromHotReading(
                pressure, temperature, speed, flow, bearingShare(reading, inputs), jet, 0, series, habits);
    }

    private static double bearingShare(Section reading, Inputs inputs) {
        double share = inputs.measured(reading, "bearingShare")
                .orElseGet(() -> inputs.assumed(
                        reading.pathOf("bearingShare"),
                        Measured.between(
                                Kind.FRACTION, TYPICAL_BEARING_SHARE[0], TYPICAL_BEARING_SHARE[1], Provenance.TYPICAL),
                        "assumption.bearingShare"))
                .value();
        return Math.min(1, share);
    }

    private static double orCommon(Section reading, String key, double common, Inputs inputs) {
        return inputs.measured(reading, key)
                .orElseGet(() -> inputs.assumed(
                        reading.pathOf(key),
                        Measured.factor(Kind.LENGTH, common, 0.2, Provenance.GUESSED),
                        "assumption.commonJet"))
                .value();
    }

    private static double passageResistance(Section section, Inputs inputs) {
        double stated = inputs.valueOr(section, "passageResistance", 0);
        return stated
                + section.section("passage")
                        .filter(passage -> passage.has("bore"))
                        .map(passage -> Passages.tube(
                                        inputs.value(passage, "bore").orElseThrow(),
                                        inputs.valueOr(passage, "length", 0))
                                .laminar())
                        .orElse(0.0);
    }

    private static AdditiveLaw bore(Section passage, String bore, String length, Inputs inputs) {
        return Openings.hole(
                inputs.value(passage, bore).orElseThrow(), inputs.valueOr(passage, length, 0), Openings.SHORT_TUBE);
    }

    /** Bearings with side flow and friction counted per turn of the pump. */
    private static Bearings bearings(Section section, double turns, Inputs inputs) {
        Optional<Section> film = section.section("film");
        double heatLoss =
                film.map(below -> inputs.valueOr(below, "heatLoss", 0)).orElse(0.0);
        double stated =
                film.map(below -> inputs.valueOr(below, "dissipation", 0)).orElse(0.0);
        double weight = film.filter(below -> below.has("weight"))
                .map(below -> inputs.value(below, "weight").orElseThrow())
                .orElseGet(() -> inputs.constant("engine.filmWeight"));
        List<BearingGroup> groups = new ArrayList<>();
        for (Section bearing : section.sections("bearings")) {
            groups.add(group(bearing, inputs));
        }
        Bearings geometry = groups.isEmpty()
                ? new Bearings(0, 0, 0, heatLoss, weight)
                : new GalleryFromBearings(0, groups, List.of(), heatLoss, weight)
                        .resolve()
                        .bearings();
        double friction = stated > 0 ? stated : geometry.friction();
        double sideFlow = geometry.sideFlow() + inputs.valueOr(section, "sideFlow", 0);
        boolean known = friction > 0;
        return new Bearings(
                geometry.conductance(), sideFlow / turns, friction / (turns * turns), heatLoss, known ? weight : 0);
    }

    private static BearingGroup group(Section bearing, Inputs inputs) {
        double land = inputs.value(bearing, "landLength").orElseThrow();
        GroovedBearing one = new GroovedBearing(
                inputs.value(bearing, "diameter").orElseThrow(),
                inputs.value(bearing, "radialClearance").orElseThrow(),
                land,
                Math.min(0.98, inputs.valueOr(bearing, "eccentricity", 0.6)));
        boolean pumps = bearing.flag("sideFlow").orElse(false);
        double width = inputs.valueOr(bearing, "width", 2 * land);
        return new BearingGroup(one, inputs.valueOr(bearing, "count", 1), pumps ? width : 0);
    }
}
