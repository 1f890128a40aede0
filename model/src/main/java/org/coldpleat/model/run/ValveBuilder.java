package org.coldpleat.model.run;

import java.util.Optional;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Makes a bypass valve from its rows in a sheet. */
final class ValveBuilder {
    /** Share of the seat's edge that counts for a leaf hinged at one side [1]: it lifts half as far on average. */
    @Source("derived here: mean of a lift that grows from the hinge to the far edge")
    private static final double LEAF_CURTAIN = 0.5;

    /** Viscosity at which a leak is stated [Pa s]: hot oil. */
    @Source("common practice, no source")
    private static final double LEAK_VISCOSITY = 0.010;

    /** Seat, spring rate and lift of a common valve, taken with a wide band where the sheet has none. */
    @Source("common practice, no source")
    private static final double COMMON_SEAT = 0.0145;

    @Source("common practice, no source")
    private static final double COMMON_SPRING_RATE = 1700;

    @Source("common practice, no source")
    private static final double COMMON_LIFT = 0.0028;

    private ValveBuilder() {}

    /** The valve of a section; empty if it states no opening pressure. */
    static Optional<SpringValve> valve(Section section, Inputs inputs, double flowForceFactor) {
        Optional<Measured> opening = inputs.measured(section, "openingPressure");
        if (opening.isEmpty()) {
            return Optional.empty();
        }
        double pressure = opening.get().value();
        double seat = orCommon(section, inputs, "seatDiameter", Kind.LENGTH, COMMON_SEAT, 0.1);
        double rate = orCommon(section, inputs, "springRate", Kind.SPRING_RATE, COMMON_SPRING_RATE, 0.4);
        double curtain = section.choice("form").filter("leaf"::equals).isPresent() ? LEAF_CURTAIN : 1;
        double lift = inputs.value(section, "maximumLift")
                .orElseGet(() -> liftFromArea(section, inputs, curtain * Math.PI * seat));
        double leak = inputs.valueOr(section, "leak", 0) * LEAK_VISCOSITY / (pressure / 2);
        double closing = Math.min(pressure, inputs.valueOr(section, "closingPressure", pressure));
        return Optional.of(new SpringValve(
                pressure,
                seat,
                rate,
                lift,
                curtain,
                SpringValve.CURTAIN_DISCHARGE,
                0,
                port(section, inputs),
                leak,
                flowForceFactor,
                closing));
    }

    private static double liftFromArea(Section section, Inputs inputs, double edge) {
        return inputs.value(section, "fullFlowArea").isPresent()
                ? inputs.value(section, "fullFlowArea").getAsDouble() / edge
                : orCommon(section, inputs, "maximumLift", Kind.LENGTH, COMMON_LIFT, 0.25);
    }

    private static AdditiveLaw port(Section section, Inputs inputs) {
        return inputs.value(section, "portDiameter").isPresent()
                ? Openings.hole(
                        inputs.value(section, "portDiameter").getAsDouble(),
                        inputs.valueOr(section, "portLength", 0),
                        Openings.SHARP_EDGE)
                : AdditiveLaw.NONE;
    }

    private static double orCommon(
            Section section, Inputs inputs, String key, Kind kind, double common, double lnSigma) {
        return inputs.measured(section, key)
                .orElseGet(() -> inputs.assumed(
                        section.pathOf(key),
                        Measured.factor(kind, common, lnSigma, Provenance.GUESSED),
                        "assumption.commonValve"))
                .value();
    }
}
