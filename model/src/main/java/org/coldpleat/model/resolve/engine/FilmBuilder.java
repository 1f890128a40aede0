package org.coldpleat.model.resolve.engine;

import java.util.List;
import java.util.Optional;
import org.coldpleat.model.circuit.Bearings;
import org.coldpleat.model.circuit.GalleryFromBearings;
import org.coldpleat.model.circuit.GalleryFromBearings.BearingGroup;
import org.coldpleat.model.circuit.GroovedBearing;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Coverage;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/**
 * Makes the films of the bearings: as stated, from the bearings that are listed, or from the size of the engine. Films are
 * as cold as the oil only where the case says that there are none to be warmed.
 */
final class FilmBuilder {
    /** Dissipation volume over the displacement of the engine [1]. */
    @Source("Petroff's law over usual journals, two derivations of 350 and 450; derived here")
    private static final double DISSIPATION = 400;

    /** Standard uncertainty of its logarithm [1]: a factor of 1.9 as 95 % band. */
    private static final double DISSIPATION_LN_SIGMA = Math.log(1.9) / Coverage.COVERAGE_95;

    private static final double LITER = 1e-3;

    /** An engine of one liter, of whose rows those are taken that hold for plain bearings of any kind. */
    private static final TypicalEngine OF_A_LITER = new TypicalEngine("car gasoline", 1);

    /** Conductance from the films to the metal of an engine of one liter. */
    private static final Measured TO_METAL = OF_A_LITER.of("filmToMetal", Kind.HEAT_CONDUCTANCE);

    /** Pump of an engine of one liter, {@code D = k V^n}. */
    private static final Measured PUMP = OF_A_LITER.of("pumpDisplacement", Kind.DISPLACEMENT);

    private static final double PUMP_EXPONENT =
            OF_A_LITER.row("pumpDisplacement").power();

    /** Standard uncertainty of the logarithm of an engine's displacement that is told from its pump [1]. */
    private static final double SIZE_LN_SIGMA = PUMP.halfWidth() / PUMP_EXPONENT;

    private FilmBuilder() {}

    /**
     * Bearings with side flow and friction counted per turn of the pump.
     *
     * @param gallery its section
     * @param delivery of the pump per turn of the engine [m3/rev]
     * @param turns of the pump per turn of the engine [1]
     */
    static Bearings bearings(Section gallery, double delivery, double turns, Inputs inputs) {
        List<BearingGroup> groups = gallery.sections("bearings").stream()
                .map(bearing -> group(bearing, inputs))
                .toList();
        Bearings geometry = new GalleryFromBearings(0, groups, List.of(), 0, 0).together();
        double sideFlow = (geometry.sideFlow() + inputs.valueOr(gallery, "sideFlow", 0)) / turns;
        Optional<Section> film = gallery.section("film");
        if (!film.flatMap(one -> one.flag("present")).orElse(true)) {
            return new Bearings(geometry.conductance(), sideFlow, 0, 0, 0);
        }
        double size = sizeOf(delivery);
        boolean listed = !groups.isEmpty()
                && film.flatMap(one -> one.quantity("dissipation")).isEmpty();
        double friction = listed
                ? geometry.friction()
                : statedOr(gallery, film, "dissipation", Kind.VOLUME, DISSIPATION * size, DISSIPATION_LN_SIGMA, inputs);
        double usual =
                groups.isEmpty() ? TO_METAL.value() * size / LITER : GalleryFromBearings.usualMetalConductance(groups);
        double toMetal =
                statedOr(gallery, film, "heatLoss", Kind.HEAT_CONDUCTANCE, usual, TO_METAL.halfWidth(), inputs);
        double position = film.filter(one -> one.has("weight"))
                .map(one -> inputs.value(one, "weight").orElseThrow())
                .orElse(Bearings.UNMIXED);
        return new Bearings(geometry.conductance(), sideFlow, friction / (turns * turns), toMetal, position);
    }

    private static double statedOr(
            Section gallery,
            Optional<Section> film,
            String key,
            Kind kind,
            double usual,
            double lnSigma,
            Inputs inputs) {
        return film.flatMap(one -> inputs.measured(one, key))
                .orElseGet(() -> inputs.assumed(
                        gallery.pathOf("film") + "." + key,
                        Measured.factor(kind, usual, Math.hypot(lnSigma, SIZE_LN_SIGMA), Provenance.TYPICAL),
                        "assumption.film"))
                .value();
    }

    /** Displacement of an engine [m3] with a pump that delivers so much per turn of the engine [m3/rev]. */
    private static double sizeOf(double delivery) {
        return LITER * Math.pow(delivery / PUMP.value(), 1 / PUMP_EXPONENT);
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
