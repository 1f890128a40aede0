package org.coldpleat.model.resolve.candidate;

import java.util.Optional;
import org.coldpleat.model.pleat.AreaRoutes;
import org.coldpleat.model.resolve.input.Problems;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;

/** Finds what keeps a bench sheet from being computed although each of its values reads well. */
public final class CandidateCheck {
    private static final String[] EVIDENCE = {
        "resistance", "permeability", "flowBench", "airTest", "layers", "fiberDiameter", "family"
    };

    /** Tests that can speak of the medium by themselves. */
    private static final String[] TESTS = {"flowBench", "drainTest", "airTest", "bubblePoint", "fiberSizing"};

    private CandidateCheck() {}

    public static void check(Section sheet, Problems problems) {
        Optional<Section> medium = sheet.section("medium");
        if (medium.isEmpty()) {
            problems.addWhole(sheet, "candidate.mediumMissing");
            return;
        }
        if (!AreaBuilder.hasRoute(sheet)) {
            problems.addWhole(sheet, "candidate.areaUnknown");
        }
        checkEvidence(sheet, medium.get(), problems);
        checkPleats(sheet, problems);
    }

    private static void checkEvidence(Section sheet, Section medium, Problems problems) {
        Optional<Section> tests = sheet.section("tests");
        for (String key : TESTS) {
            if (tests.isPresent() && tests.get().has(key)) {
                return;
            }
        }
        for (String key : EVIDENCE) {
            if (medium.has(key)) {
                checkPermeability(medium, problems);
                return;
            }
        }
        problems.addWhole(medium, "candidate.resistanceUnknown");
    }

    /** A permeability alone says nothing without a thickness or a family to take one from. */
    private static void checkPermeability(Section medium, Problems problems) {
        boolean onlyPermeability = medium.has("permeability")
                && !medium.has("resistance")
                && !medium.has("flowBench")
                && !medium.has("airTest")
                && !medium.has("family");
        if (onlyPermeability && medium.quantity("thickness").isEmpty()) {
            problems.add(medium, "permeability", "candidate.permeabilityNeedsThickness");
        }
        boolean onlyFibers = medium.has("fiberDiameter")
                && !medium.has("family")
                && !medium.has("resistance")
                && !medium.has("flowBench")
                && !medium.has("airTest")
                && !medium.has("permeability");
        if (onlyFibers && !(medium.has("thickness") && medium.has("fiberDensity"))) {
            problems.add(medium, "fiberDiameter", "candidate.fibersNeedSheet");
        }
    }

    private static void checkPleats(Section sheet, Problems problems) {
        Optional<Section> pleats = sheet.section("pleats");
        Optional<Section> element = sheet.section("element");
        Optional<Measured> thickness = sheet.section("medium").flatMap(one -> one.quantity("thickness"));
        if (pleats.isPresent()
                && pleats.get().has("buriedPerEnd")
                && pleats.get().has("height")) {
            double left = pleats.get().quantity("height").orElseThrow().value()
                    - 2 * pleats.get().quantity("buriedPerEnd").orElseThrow().value();
            if (left <= 0) {
                problems.add(pleats.get(), "buriedPerEnd", "candidate.allBuried");
            }
        }
        if (element.isEmpty()
                || thickness.isEmpty()
                || !element.get().has("outsideDiameter")
                || !element.get().has("insideDiameter")) {
            return;
        }
        double depth = AreaRoutes.depthFromDiameters(
                        element.get().quantity("outsideDiameter").orElseThrow(),
                        element.get().quantity("insideDiameter").orElseThrow())
                .value();
        if (depth <= 4 * thickness.get().value()) {
            problems.add(
                    element.get(),
                    "insideDiameter",
                    "candidate.pleatsTooShallow",
                    new Amount(Look.LENGTH, depth).text(),
                    new Amount(Look.LENGTH, thickness.get().value()).text());
        }
    }
}
