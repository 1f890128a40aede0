package org.coldpleat.model.resolve.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.StatedIndex;
import org.coldpleat.model.oil.grade.SaeGrade;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/** Makes the oil of a case. */
public final class OilBuilder {
    /** Temperature at which a density without one is taken [K]: 15 degrees C, as data sheets state it. */
    private static final double DENSITY_TEMPERATURE = 288.15;

    /** Standard uncertainty of an index that is rounded to a whole number [1]. */
    private static final double INDEX_ROUNDING = 0.29;

    private OilBuilder() {}

    /** What the oil section says, in the order of its points with the cold point last. */
    public static OilSpec spec(Section oil, Inputs inputs) {
        List<Anchor> anchors = new ArrayList<>();
        for (Section point : oil.sections("points")) {
            anchors.add(anchor(point, Anchor.Method.LOW_SHEAR, inputs));
        }
        oil.section("coldPoint").ifPresent(point -> anchors.add(anchor(point, coldMethod(point), inputs)));
        OptionalDouble density = Inputs.number(inputs.folded(oil, "density"));
        return new OilSpec(
                oil.text("name").or(() -> oil.text("grade")).orElse(""),
                anchors,
                density,
                Inputs.number(inputs.folded(oil, "densityTemperature")).orElse(DENSITY_TEMPERATURE),
                Inputs.number(inputs.folded(oil, "pourPoint")),
                grade(oil),
                index(oil, inputs));
    }

    /** The oil on its curve. */
    public static Oil oil(Section section, Inputs inputs) {
        return OilResolver.resolve(spec(section, inputs)).orThrow();
    }

    /** The oil moved off its curve by a number of standard deviations if the build moves it. */
    public static Oil shifted(Oil oil, Inputs inputs) {
        return oil.shifted(inputs.constant("oil.coldCurve"));
    }

    private static Optional<SaeGrade> grade(Section oil) {
        return oil.text("grade").flatMap(SaeGrade::parse);
    }

    private static Optional<StatedIndex> index(Section oil, Inputs inputs) {
        return inputs.folded(oil, "viscosityIndex")
                .map(value -> new StatedIndex(
                        value.value(), Math.max(value.standardUncertainty(), INDEX_ROUNDING), value.provenance()));
    }

    private static Anchor.Method coldMethod(Section point) {
        return point.choice("method").filter("highShear"::equals).isPresent()
                ? Anchor.Method.HIGH_SHEAR
                : Anchor.Method.LOW_SHEAR;
    }

    private static Anchor anchor(Section point, Anchor.Method dynamicMethod, Inputs inputs) {
        Optional<Measured> kinematic = inputs.folded(point, "kinematic");
        Measured value = kinematic.or(() -> inputs.folded(point, "dynamic")).orElseThrow();
        double temperature = inputs.folded(point, "temperature").orElseThrow().value();
        Anchor.Method method = kinematic.isPresent() ? Anchor.Method.KINEMATIC : dynamicMethod;
        double lnUncertainty = Math.max(value.standardUncertainty() / value.value(), method.defaultLnUncertainty());
        return new Anchor(method, temperature, value.value(), lnUncertainty, value.provenance());
    }
}
