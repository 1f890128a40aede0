package org.coldpleat.ui.chart.cutaway;

import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.Section;

/** What the drawing takes from a bench sheet [mm]. A size that is not on the sheet fits the others and is drawn dashed. */
record CutawaySheet(
        String name,
        Measure canDiameter,
        Measure canLength,
        Measure canInside,
        Measure gasketOutside,
        Measure gasketInside,
        Measure gasketThickness,
        Measure plateThickness,
        Measure inletCount,
        Measure inletDiameter,
        Measure outletDiameter,
        Measure outletLength,
        boolean flapPresent,
        Measure flapLip,
        Measure flapLength,
        Measure flapThickness,
        String bypassPosition,
        String bypassForm,
        Measure seat,
        Measure largestLift,
        Measure tubeInside,
        Measure tubeWall,
        Measure holeCount,
        Measure holeDiameter,
        Measure louverCount,
        Measure louverLength,
        Measure louverWidth,
        Measure elementOutside,
        Measure elementInside,
        Measure elementLength,
        Measure pleatCount,
        Measure legLength,
        Measure buried,
        Measure thickness) {

    static CutawaySheet of(Section candidate) {
        Optional<Section> outside = candidate.section("outside");
        Optional<Section> gasket = candidate.section("gasket");
        Optional<Section> plate = candidate.section("basePlate");
        Optional<Section> inlet = plate.flatMap(section -> section.section("inletHoles"));
        Optional<Section> outlet = plate.flatMap(section -> section.section("outletBore"));
        Optional<Section> flap = candidate.section("antiDrainFlap");
        Optional<Section> bypass = candidate.section("bypass");
        Optional<Section> tube = candidate.section("centerTube");
        Optional<Section> holes = tube.flatMap(section -> section.section("holes"));
        Optional<Section> louvers = tube.flatMap(section -> section.section("louvers"));
        Optional<Section> element = candidate.section("element");
        Optional<Section> pleats = candidate.section("pleats");
        Optional<Section> medium = candidate.section("medium");
        Optional<Section> strip = medium.flatMap(section -> section.section("strip"));

        Measure stated = Measure.length(element, "outsideDiameter", 66);
        Measure can = Measure.length(outside, "diameter", stated.value() + 10);
        Measure elementOutside = stated.or(new Measure(can.value() - 10, false));
        double wall = Measure.length(outside, "wallThickness", 0.5).value();
        Measure tubeInside = Measure.length(tube, "insideDiameter", elementOutside.value() / 2 - 3);
        Measure elementInside = Measure.length(element, "insideDiameter", tubeInside.value() + 3);
        Measure tubeShown = tubeInside.or(new Measure(elementInside.value() - 3, false));
        Measure length = Measure.length(element, "length", 0)
                .or(Measure.length(pleats, "height", 0))
                .or(Measure.length(strip, "width", 62));
        Measure canLength = Measure.length(outside, "length", length.value() + 26);
        Measure elementLength = length.or(new Measure(canLength.value() - 26, false));
        Measure thickness = Measure.length(plate, "thickness", 2.8);
        Measure count = Measure.count(pleats, "count", 0);
        return new CutawaySheet(
                candidate.text("name").orElse(""),
                can,
                canLength,
                Measure.length(outside, "insideDiameter", can.value() - 2 * wall),
                Measure.length(gasket, "outsideDiameter", can.value() - 4),
                Measure.length(gasket, "insideDiameter", can.value() - 14),
                Measure.length(gasket, "thickness", 5),
                thickness,
                Measure.count(inlet, "count", 8),
                Measure.length(inlet, "diameter", 6),
                Measure.length(outlet, "diameter", 17),
                Measure.length(outlet, "length", thickness.value() + 12),
                flap.flatMap(section -> section.flag("present")).orElse(true),
                Measure.length(flap, "lipDiameter", can.value() * 0.6),
                Measure.length(flap, "freeLength", 9),
                Measure.length(flap, "thickness", 1.3),
                bypass.flatMap(section -> section.choice("position")).orElse("dome"),
                bypass.flatMap(section -> section.choice("form")).orElse(""),
                Measure.length(bypass, "seatDiameter", 14.5),
                Measure.length(bypass, "maximumLift", 2.8),
                tubeShown,
                Measure.length(tube, "wallThickness", 0.4),
                Measure.count(holes, "count", 0),
                Measure.length(holes, "diameter", 0),
                Measure.count(louvers, "count", 0),
                Measure.length(louvers, "length", 0),
                Measure.length(louvers, "width", 0),
                elementOutside,
                elementInside,
                elementLength,
                count,
                leg(pleats, strip, count, (elementOutside.value() - elementInside.value()) / 2),
                Measure.length(pleats, "buriedPerEnd", 0),
                Measure.length(medium, "thickness", 0).or(layers(medium)));
    }

    /** Length of a leg: its share of the unrolled strip, else as measured, else what the diameters leave. */
    private static Measure leg(Optional<Section> pleats, Optional<Section> strip, Measure count, double byDiameters) {
        Measure length = Measure.length(strip, "length", 0);
        if (length.measured() && count.measured()) {
            double off = strip.orElseThrow().sections("allowances").stream()
                    .filter(one -> one.choice("on").orElse("").equals("length"))
                    .mapToDouble(one ->
                            one.quantity("by").map(by -> 1000 * by.value()).orElse(0.0))
                    .sum();
            return new Measure((length.value() + off) / (2 * count.value()), true);
        }
        return Measure.length(pleats, "depth", byDiameters);
    }

    private static Measure layers(Optional<Section> medium) {
        double sum = 0;
        for (Section layer : medium.map(section -> section.sections("layers")).orElse(List.of())) {
            sum += Measure.length(Optional.of(layer), "thickness", Double.NaN).value();
        }
        return sum > 0 ? new Measure(sum, true) : new Measure(0.7, false);
    }

    boolean isValveInside() {
        return bypassPosition.equals("dome") || bypassPosition.equals("base");
    }

    /** What is left free between neighboring legs at the core [mm]; negative if they need more room than there is. */
    double gapAtCore() {
        return Math.PI * elementInside.half() / pleatCount.value() - thickness.value();
    }
}
