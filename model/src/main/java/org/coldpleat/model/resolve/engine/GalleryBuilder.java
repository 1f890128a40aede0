package org.coldpleat.model.resolve.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.Gallery;
import org.coldpleat.model.circuit.GalleryFromHotReading;
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
    private static final Measured TYPICAL_BEARING_SHARE = Measured.between(Kind.FRACTION, 0.3, 0.9, Provenance.TYPICAL);

    /** Least share of the bearings that a draw may come to [1]. */
    private static final double LEAST_BEARING_SHARE = 0.01;

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

    static Built gallery(Section engine, Pump pump, double turns, Lubricant oil, Inputs inputs) {
        Section section = engine.section("gallery").orElseThrow();
        double series = passageResistance(section, inputs);
        Bearings bearings = FilmBuilder.bearings(section, pump.displacement() * turns, turns, inputs);
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
                bearings.metalConductance(),
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
                pressure,
                temperature,
                speed,
                flow,
                bearingShare(reading, pump, turns, oil, inputs),
                jet,
                0,
                series,
                inputs.constant("engine.metalLeadAtReading"),
                habits);
    }

    private static double bearingShare(Section reading, Pump pump, double turns, Lubricant oil, Inputs inputs) {
        Optional<Measured> stated = reading.quantity("bearingShare");
        Optional<Measured> told =
                TwoReadings.bearingShare(reading, pump, turns, oil, stated.orElse(TYPICAL_BEARING_SHARE));
        double share = told.isPresent()
                ? inputs.derived(reading.pathOf("bearingShare"), told.get())
                : inputs.measured(reading, "bearingShare")
                        .orElseGet(() -> inputs.assumed(
                                reading.pathOf("bearingShare"), TYPICAL_BEARING_SHARE, "assumption.bearingShare"))
                        .value();
        return Math.min(1, Math.max(LEAST_BEARING_SHARE, share));
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
}
