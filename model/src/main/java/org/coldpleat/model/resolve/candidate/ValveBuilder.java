package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.bench.ScaleTest;
import org.coldpleat.model.evidence.ValueCombination;
import org.coldpleat.model.flow.AdditiveLaw;
import org.coldpleat.model.flow.Openings;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.model.valve.SpringValve;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Source;

/** Makes a bypass valve from its rows in a sheet. */
public final class ValveBuilder {
    /** Share of the seat's edge that counts for a leaf hinged at one side [1]: it lifts half as far on average. */
    @Source("derived here: mean of a lift that grows from the hinge to the far edge")
    private static final double LEAF_CURTAIN = 0.5;

    /** Viscosity at which a leak is stated [Pa s]: hot oil. */
    @Source("common practice, no source")
    private static final double LEAK_VISCOSITY = 0.010;

    private ValveBuilder() {}

    /** The valve of a section; empty if it states no opening pressure. */
    public static Optional<SpringValve> valve(Section section, Inputs inputs, double flowForceFactor) {
        return valve(section, inputs, flowForceFactor, Optional.empty());
    }

    /** The printed opening pressure or spring rate and that of a scale test, put together; empty if there is neither. */
    public static Optional<ValueCombination> combined(
            Section section, Inputs inputs, String key, Kind kind, Optional<Measured> scale) {
        List<ValueCombination.Member> members = new ArrayList<>();
        inputs.folded(section, key).ifPresent(value -> members.add(new ValueCombination.Member("stated", value)));
        scale.filter(value -> value.value() > 0)
                .ifPresent(value -> members.add(new ValueCombination.Member("scaleTest", value)));
        return members.isEmpty() ? Optional.empty() : Optional.of(ValueCombination.combine(kind, members));
    }

    /** The valve of a section and of a scale test; where neither gives an opening pressure, the usual one. */
    static SpringValve valveOrUsual(
            Section section, Inputs inputs, double flowForceFactor, Optional<ScaleTest.Result> scale) {
        return valve(section, inputs, flowForceFactor, scale)
                .orElseGet(() -> valve(
                        section,
                        inputs,
                        flowForceFactor,
                        scale,
                        inputs.following(
                                section.pathOf("openingPressure"),
                                TypicalFilter.of("bypass.openingPressure").measured(),
                                "assumption.usualOpening")));
    }

    /** A usual valve, for a sheet that does not tell of one at a path. */
    static SpringValve usual(String path, Inputs inputs, double flowForceFactor) {
        double pressure = inputs.following(
                path + ".openingPressure",
                TypicalFilter.of("bypass.openingPressure").measured(),
                "assumption.usualOpening");
        return new SpringValve(
                pressure,
                usual(path, inputs, "seatDiameter"),
                usual(path, inputs, "springRate"),
                usual(path, inputs, "maximumLift"),
                1,
                SpringValve.CURTAIN_DISCHARGE,
                AdditiveLaw.NONE,
                0,
                flowForceFactor,
                pressure);
    }

    private static double usual(String path, Inputs inputs, String key) {
        return inputs.following(
                path + "." + key, TypicalFilter.of("bypass." + key).measured(), "assumption.commonValve");
    }

    /** The valve of a section and of a scale test; empty if neither gives an opening pressure. */
    private static Optional<SpringValve> valve(
            Section section, Inputs inputs, double flowForceFactor, Optional<ScaleTest.Result> scale) {
        return orScale(
                        section,
                        inputs,
                        "openingPressure",
                        Kind.PRESSURE_DIFFERENCE,
                        scale.flatMap(one -> one.opening().value()))
                .map(opening -> valve(section, inputs, flowForceFactor, scale, opening.value()));
    }

    private static SpringValve valve(
            Section section, Inputs inputs, double flowForceFactor, Optional<ScaleTest.Result> scale, double pressure) {
        double seat = orUsual(section, inputs, "seatDiameter");
        double rate = orScale(
                        section, inputs, "springRate", Kind.SPRING_RATE, scale.flatMap(ScaleTest.Result::springRate))
                .map(Measured::value)
                .orElseGet(() -> orUsual(section, inputs, "springRate"));
        double curtain = section.choice("form").filter("leaf"::equals).isPresent() ? LEAF_CURTAIN : 1;
        double lift = inputs.value(section, "maximumLift")
                .orElseGet(() -> liftFromArea(section, inputs, curtain * Math.PI * seat));
        double leak = inputs.valueOr(section, "leak", 0) * LEAK_VISCOSITY / (pressure / 2);
        double closing = Math.min(pressure, closing(section, inputs, pressure, scale));
        return new SpringValve(
                pressure,
                seat,
                rate,
                lift,
                curtain,
                inputs.valueOr(section, "dischargeCoefficient", SpringValve.CURTAIN_DISCHARGE),
                port(section, inputs),
                leak,
                flowForceFactor,
                closing);
    }

    /** Stated value, or where the scale speaks too both put together as one unknown. */
    private static Optional<Measured> orScale(
            Section section, Inputs inputs, String key, Kind kind, Optional<Measured> scale) {
        if (scale.isEmpty() || !(scale.get().value() > 0)) {
            return inputs.measured(section, key);
        }
        Measured value =
                combined(section, inputs, key, kind, scale).orElseThrow().value();
        double moved = inputs.derived(section.pathOf(key), value);
        return Optional.of(Measured.exact(kind, moved, value.provenance()));
    }

    /** Where the plate was seen to sit down again, the ratio of closing to opening pressure is kept. */
    private static double closing(Section section, Inputs inputs, double opening, Optional<ScaleTest.Result> scale) {
        Optional<Measured> seen = scale.flatMap(ScaleTest.Result::closing);
        if (section.has("closingPressure") || seen.isEmpty()) {
            return inputs.valueOr(section, "closingPressure", opening);
        }
        double lifted =
                scale.flatMap(one -> one.opening().value()).orElseThrow().value();
        return opening * Math.min(1, seen.get().value() / lifted);
    }

    private static double liftFromArea(Section section, Inputs inputs, double edge) {
        return inputs.value(section, "fullFlowArea").isPresent()
                ? inputs.value(section, "fullFlowArea").getAsDouble() / edge
                : usual(section.path(), inputs, "maximumLift");
    }

    private static AdditiveLaw port(Section section, Inputs inputs) {
        return inputs.value(section, "portDiameter").isPresent()
                ? Openings.hole(
                                inputs.value(section, "portDiameter").getAsDouble(),
                                inputs.valueOr(section, "portLength", 0),
                                inputs.valueOr(section, "portDischargeCoefficient", Openings.SHARP_EDGE))
                        .parallelOf(inputs.valueOr(section, "portCount", 1))
                : AdditiveLaw.NONE;
    }

    private static double orUsual(Section section, Inputs inputs, String key) {
        return inputs.measured(section, key).map(Measured::value).orElseGet(() -> usual(section.path(), inputs, key));
    }
}
