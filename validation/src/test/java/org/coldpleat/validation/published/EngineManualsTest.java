package org.coldpleat.validation.published;

import java.util.List;
import org.coldpleat.model.circuit.GalleryFromBearings;
import org.coldpleat.model.circuit.GalleryFromBearings.BearingGroup;
import org.coldpleat.model.circuit.GroovedBearing;
import org.coldpleat.model.typical.TypicalEngine;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.junit.jupiter.api.Test;

/** What stands in for an engine against what workshop manuals state of engines, and bearings against exact formulas. */
class EngineManualsTest {
    private static final String MANUALS =
            "workshop manuals of single engines, from notes; the rule was made with them in view";
    private static final double CUBIC_CENTIMETER = 1e-6;

    private static Measured pump(String kind, double liters) {
        return new TypicalEngine(kind, liters).of("pumpDisplacement", Kind.DISPLACEMENT);
    }

    private static ExternalCheck check(String what) {
        return ExternalCheck.of(Topic.CIRCUIT, what, MANUALS);
    }

    @Test
    void statedPumpsLieInTheBandOfTheRule() {
        Measured flat = pump("car gasoline", 2.5);
        for (double stated : new double[] {7.2, 9.7}) {
            check("in sample: pump of a 2.5 L gasoline engine")
                    .expected(stated, "cm3/rev")
                    .computed(flat.value() / CUBIC_CENTIMETER)
                    .within((flat.high() - flat.value()) / CUBIC_CENTIMETER, "stated band of the rule");
        }
        Measured large = pump("heavy diesel", 7.5);
        check("in sample: pump of a 7.5 L diesel")
                .expected(36, "cm3/rev")
                .computed(large.value() / CUBIC_CENTIMETER)
                .within((large.high() - large.value()) / CUBIC_CENTIMETER, "stated band of the rule");
        Measured industrial = pump("car diesel", 2.4);
        check("in sample: pump of a 2.4 L diesel, 12.2 cm3/rev at least")
                .expected(12.2, "cm3/rev")
                .computed(industrial.value() / CUBIC_CENTIMETER)
                .within((industrial.high() - industrial.value()) / CUBIC_CENTIMETER, "stated band of the rule");
    }

    @Test
    void bearingsOfTwoLitersHaveTheFrictionOfPetroff() {
        List<BearingGroup> mains = List.of(new BearingGroup(new GroovedBearing(55e-3, 20e-6, 8e-3, 0.6), 5, 16e-3));
        List<BearingGroup> rods = List.of(new BearingGroup(new GroovedBearing(48e-3, 21e-6, 9e-3, 0.7), 4, 18e-3));
        ExternalCheck.of(Topic.CIRCUIT, "friction of five main bearings", "Petroff's law, textbook; worked by hand")
                .expected(0.5227, "m3")
                .computed(friction(mains))
                .within(1e-4, "half the last digit");
        ExternalCheck.of(Topic.CIRCUIT, "friction of four rod bearings", "Petroff's law, textbook; worked by hand")
                .expected(0.2978, "m3")
                .computed(friction(rods))
                .within(1e-4, "half the last digit");
        ExternalCheck.of(Topic.CIRCUIT, "oil carried out by both", "short bearing, textbook; worked by hand")
                .expected(0.325, "cm3/rev")
                .computed((sideFlow(mains) + sideFlow(rods)) / CUBIC_CENTIMETER)
                .within(5e-4, "half the last digit");
    }

    private static double friction(List<BearingGroup> groups) {
        return new GalleryFromBearings(0, groups, List.of(), 0, 0).together().friction();
    }

    private static double sideFlow(List<BearingGroup> groups) {
        return new GalleryFromBearings(0, groups, List.of(), 0, 0).together().sideFlow();
    }
}
