package org.coldpleat.model.oil;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.coldpleat.model.oil.grade.ViscosityGrade;
import org.coldpleat.shared.quantity.Require;

/**
 * What a user knows about an oil: points and a density, or no more than its grade.
 *
 * @param name as the user calls it
 * @param anchors known viscosities, in any order; empty for grade only
 * @param density [kg/m3] at {@code densityTemperature}, if known
 * @param densityTemperature [K]
 * @param pourPoint [K], if known
 * @param grade stated grade, if any
 * @param viscosityIndex stated viscosity index, if any
 * @param base stated base of an oil without viscosity improver, if any
 */
public record OilSpec(
        String name,
        List<Anchor> anchors,
        OptionalDouble density,
        double densityTemperature,
        OptionalDouble pourPoint,
        Optional<ViscosityGrade> grade,
        Optional<StatedIndex> viscosityIndex,
        Optional<OilBase> base) {
    public OilSpec {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(pourPoint, "pourPoint");
        Objects.requireNonNull(grade, "grade");
        Objects.requireNonNull(viscosityIndex, "viscosityIndex");
        Objects.requireNonNull(base, "base");
        anchors = List.copyOf(anchors);
        Require.positive("densityTemperature", densityTemperature, "K");
    }

    /** An oil of which points are known; add the density with {@link #withDensity}. */
    public static OilSpec ofPoints(String name, Anchor... anchors) {
        return new OilSpec(
                name,
                List.of(anchors),
                OptionalDouble.empty(),
                MpmsDensity.REFERENCE_TEMPERATURE,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** An oil of which only the grade is known: the typical oil of the grade is asked for. */
    public static OilSpec ofGrade(String name, ViscosityGrade grade) {
        return ofPoints(name).withGrade(grade);
    }

    /** What tells the class of the oil beside its viscosities. */
    ColdHint hint() {
        return new ColdHint(base, grade.filter(ViscosityGrade::isMultigrade).isPresent());
    }

    /** The same with one more point, behind the others. */
    OilSpec withPoint(Anchor point) {
        return new OilSpec(
                name,
                Stream.concat(anchors.stream(), Stream.of(point)).toList(),
                density,
                densityTemperature,
                pourPoint,
                grade,
                viscosityIndex,
                base);
    }

    /** The same with a density [kg/m3] at a temperature [K]. */
    public OilSpec withDensity(double value, double temperature) {
        return new OilSpec(
                name, anchors, OptionalDouble.of(value), temperature, pourPoint, grade, viscosityIndex, base);
    }

    /** The same with a pour point [K]. */
    public OilSpec withPourPoint(double temperature) {
        return new OilSpec(
                name,
                anchors,
                density,
                densityTemperature,
                OptionalDouble.of(temperature),
                grade,
                viscosityIndex,
                base);
    }

    /** The same with a stated grade, against which the oil is checked. */
    public OilSpec withGrade(ViscosityGrade stated) {
        return new OilSpec(
                name, anchors, density, densityTemperature, pourPoint, Optional.of(stated), viscosityIndex, base);
    }

    /** The same with a viscosity index: a second point if only one is known, else held against the points. */
    public OilSpec withViscosityIndex(StatedIndex index) {
        return new OilSpec(name, anchors, density, densityTemperature, pourPoint, grade, Optional.of(index), base);
    }

    /** The same with the base that its maker states; a multigrade counts as such whatever its base. */
    public OilSpec withBase(OilBase stated) {
        return new OilSpec(
                name, anchors, density, densityTemperature, pourPoint, grade, viscosityIndex, Optional.of(stated));
    }
}
