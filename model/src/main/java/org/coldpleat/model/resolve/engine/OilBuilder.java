package org.coldpleat.model.resolve.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.oil.Anchor;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilBase;
import org.coldpleat.model.oil.OilBlend;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilSpec;
import org.coldpleat.model.oil.StatedIndex;
import org.coldpleat.model.oil.grade.ViscosityGrade;
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
                index(oil, inputs),
                base(oil));
    }

    /** The oil of a case on its curve, with what was poured into it. */
    public static Oil oil(Section section, Inputs inputs) {
        Oil main = OilResolver.resolve(spec(section, inputs)).orThrow();
        return section.section("topUp")
                .map(other -> blend(
                                main,
                                OilResolver.resolve(spec(other, inputs)).orThrow(),
                                inputs.folded(other, "share").orElseThrow())
                        .oil())
                .orElse(main);
    }

    /** An oil with another one poured into it, of which the share [1] of the whole is known. */
    public static OilBlend blend(Oil main, Oil added, Measured share) {
        return new OilBlend(main, added, share.value(), share.standardUncertainty());
    }

    /** The oil moved off its curve by a number of standard deviations if the build moves it. */
    public static Oil shifted(Oil oil, Inputs inputs) {
        return oil.shifted(inputs.constant("oil.coldCurve"));
    }

    private static Optional<ViscosityGrade> grade(Section oil) {
        return oil.text("grade").flatMap(ViscosityGrade::parse);
    }

    private static Optional<OilBase> base(Section oil) {
        return oil.choice("base").map(word -> word.equals("synthetic") ? OilBase.SYNTHETIC : OilBase.MINERAL);
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
