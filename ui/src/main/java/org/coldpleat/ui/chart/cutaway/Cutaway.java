package org.coldpleat.ui.chart.cutaway;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.steady.PointResult;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.style.UnitWords;

/** Draws a candidate cut open, to scale from its own bench sheet, as it stands at one operating point. */
public final class Cutaway {
    /** Room for a heading above the can, and for the streams below it [mm]. */
    private static final double HEADING = 9;

    private static final double STREAMS = 14;
    private static final double BESIDE = 10;
    private static final double AWAY = 5;
    private static final double EDGE = 2;

    /** Height of the look at the legs from near [mm]. */
    private static final double NEAR = 40;

    private final UnitWords words;

    private Cutaway(UnitWords words) {
        this.words = words;
    }

    /**
     * The drawing of one candidate.
     *
     * @param candidate section of the candidate in the case file
     * @param point operating point of that candidate
     * @param fullFlow flow whose stream fills the room between can and element [m3/s]; that of the point if smaller
     * @param units units of the words
     */
    public static CutawayDrawing of(Section candidate, PointResult point, double fullFlow, UnitSystem units) {
        return new Cutaway(UnitWords.of(units)).drawing(candidate, point, fullFlow);
    }

    /** The cut along the axis, below it the cut across, and beside that the legs from near. */
    private CutawayDrawing drawing(Section candidate, PointResult point, double fullFlow) {
        CutawaySheet sheet = CutawaySheet.of(candidate);
        Pressures pressures = Pressures.of(point);
        Pen pen = new Pen();
        double diameter = sheet.canDiameter().value();
        double reach = diameter / 2 + BESIDE + diameter;
        SideSection side = new SideSection(sheet, point, pressures, pen, reach, HEADING);
        side.draw();
        new Streams(sheet, side, pressures, pen, point, Math.max(fullFlow, point.flow())).draw();
        double acrossTop = side.bottom + STREAMS;
        double acrossY = acrossTop + diameter / 2;
        CrossSection cross = new CrossSection(sheet, pressures, pen);
        cross.draw(reach, acrossY);
        double nearX = reach + diameter / 2 + BESIDE + diameter / 2;
        cross.drawNear(nearX, acrossY + NEAR / 2);

        List<Label> labels = new ArrayList<>();
        labels.add(heading(CutawayTexts.get("heading.side"), reach, HEADING));
        if (sheet.pleatCount().measured()) {
            labels.add(heading(
                    CutawayTexts.get(
                            "heading.near", words.length(sheet.thickness().value())),
                    nearX,
                    acrossY - NEAR / 2));
        }
        List<Target> left = left(sheet, side);
        double pleats = (sheet.elementOutside().half() + sheet.elementInside().half()) / 2;
        left.add(new Target(
                CutawayTexts.get("heading.cross", pleats(sheet)),
                reach - pleats,
                acrossY,
                sheet.pleatCount().measured()));
        beside(labels, left, reach - diameter / 2 - AWAY, Label.Side.ENDING);
        beside(labels, right(sheet, side, point), reach + diameter / 2 + AWAY, Label.Side.BEGINNING);

        List<String> notes = new ArrayList<>();
        notes.add(CutawayTexts.get("note.custom"));
        if (cross.legsBend()) {
            notes.add(CutawayTexts.get("note.bent"));
        }
        return new CutawayDrawing(
                CutawayTexts.get("title", sheet.name()),
                subtitle(point),
                2 * reach,
                acrossTop + diameter + EDGE,
                pen.pieces(),
                labels,
                words.pressureNumber(point.pressureDrop()),
                CutawayTexts.get("legend.pressure", words.pressureSymbol()),
                notes);
    }

    /**
     * The cut along the axis alone, without words, close to the edge on every side.
     *
     * @param fullFlow flow whose stream fills the room between can and element [m3/s]; that of the point if smaller
     */
    public static CutawayDrawing side(Section candidate, PointResult point, double fullFlow) {
        CutawaySheet sheet = CutawaySheet.of(candidate);
        Pressures pressures = Pressures.of(point);
        Pen pen = new Pen();
        double radius = sheet.canDiameter().half();
        SideSection side = new SideSection(sheet, point, pressures, pen, radius + EDGE, EDGE);
        side.draw();
        new Streams(sheet, side, pressures, pen, point, Math.max(fullFlow, point.flow())).draw();
        return new CutawayDrawing(
                sheet.name(), "", 2 * (radius + EDGE), side.bottom + 14, pen.pieces(), List.of(), "", "", List.of());
    }

    private static Label heading(String words, double x, double y) {
        return new Label(words, x, y, Label.Side.HEADING, Double.NaN, 0, true);
    }

    private String subtitle(PointResult point) {
        String share = point.bypass()
                .map(bypass -> bypass.open()
                        ? CutawayTexts.get("bypass.open", number(100 * bypass.share()))
                        : CutawayTexts.get("bypass.shut"))
                .orElse(CutawayTexts.get("bypass.none"));
        return CutawayTexts.get(
                "subtitle",
                point.state().isEmpty() ? CutawayTexts.get("state.given") : point.state(),
                words.temperature(point.temperature()),
                words.flow(point.flow()),
                words.pressure(point.pressureDrop()),
                share);
    }

    private String pleats(CutawaySheet sheet) {
        if (!sheet.pleatCount().measured()) {
            return CutawayTexts.get("pleats.unknown");
        }
        String count = number(sheet.pleatCount().rounded());
        if (!sheet.thickness().measured()) {
            return CutawayTexts.get("pleats.noThickness", count);
        }
        double gap = sheet.gapAtCore();
        return gap <= 0.1 * sheet.thickness().value()
                ? CutawayTexts.get("pleats.touch", count)
                : CutawayTexts.get("pleats.apart", count, words.length(gap));
    }

    /** Something named beside the drawing: its words, and where the line to it ends. */
    private record Target(String text, double x, double y, boolean measured) {}

    private List<Target> left(CutawaySheet sheet, SideSection side) {
        List<Target> all = new ArrayList<>();
        double r = sheet.canDiameter().half();
        all.add(named("outside", side.cx - 0.8 * r, side.top + 2, sheet.canDiameter(), Optional.of(sheet.canLength())));
        double gap = sheet.canInside().half() - sheet.elementOutside().half();
        boolean known = sheet.canDiameter().measured() && sheet.elementOutside().measured();
        all.add(named(
                "annulus",
                side.cx - sheet.canInside().half() + gap / 2,
                side.elementTop + 0.25 * sheet.elementLength().value(),
                new Measure(gap, known),
                Optional.empty()));
        double pack = (sheet.elementOutside().half() + sheet.elementInside().half()) / 2;
        all.add(named(
                "pack",
                side.cx - pack,
                side.elementTop + 0.45 * sheet.elementLength().value(),
                sheet.elementOutside(),
                Optional.of(sheet.elementLength())));
        if (sheet.flapPresent()) {
            all.add(named(
                    "flap",
                    side.cx - sheet.flapLip().half() + 1,
                    side.plateTop - 1.6,
                    sheet.flapLip(),
                    Optional.empty()));
        } else {
            all.add(new Target(CutawayTexts.get("label.noFlap"), side.cx - side.holeRadius, side.plateTop - 1, true));
        }
        all.add(counted(
                "inlet", side.cx - side.holeRadius, side.bottom - 1, sheet.inletCount(), sheet.inletDiameter()));
        all.add(named(
                "gasket",
                side.cx - sheet.gasketOutside().half() + 1,
                side.bottom + sheet.gasketThickness().half(),
                sheet.gasketThickness(),
                Optional.empty()));
        return all;
    }

    private List<Target> right(CutawaySheet sheet, SideSection side, PointResult point) {
        List<Target> all = new ArrayList<>();
        double wall = sheet.tubeInside().half();
        double middle = side.elementTop + 0.55 * sheet.elementLength().value();
        if (sheet.louverCount().measured()) {
            all.add(counted("louvers", side.cx + wall, middle, sheet.louverCount(), sheet.louverLength()));
        } else {
            all.add(counted("holes", side.cx + wall, middle, sheet.holeCount(), sheet.holeDiameter()));
        }
        all.add(named(
                "outlet",
                side.cx + sheet.outletDiameter().half() - 1,
                side.bottom - 1,
                sheet.outletDiameter(),
                Optional.empty()));
        all.add(valve(sheet, side, point));
        return all;
    }

    private Target valve(CutawaySheet sheet, SideSection side, PointResult point) {
        boolean dome = sheet.bypassPosition().equals("dome");
        double y = dome ? side.elementTop + 1 : side.elementBottom - 1;
        double x = side.cx + (dome ? sheet.seat().half() : side.ringRadius() + 1);
        if (sheet.bypassPosition().equals("block")) {
            return new Target(CutawayTexts.get("label.valve.block"), side.cx + 4, side.bottom + 12, true);
        }
        if (point.bypass().isEmpty() || !sheet.isValveInside()) {
            return new Target(CutawayTexts.get("label.valve.none"), side.cx + 8, side.elementTop, true);
        }
        String key = point.bypass().get().open() ? "label.valve.open" : "label.valve.shut";
        String unknown =
                sheet.largestLift().measured() && sheet.seat().measured() ? "" : " - " + CutawayTexts.get("unknown");
        return new Target(
                CutawayTexts.get(
                                key,
                                words.length(side.lift),
                                words.length(sheet.largestLift().value()))
                        + unknown,
                x,
                y,
                unknown.isEmpty());
    }

    private Target named(String part, double x, double y, Measure first, Optional<Measure> second) {
        return target(part, x, y, words.length(first.value()), first, second);
    }

    private Target counted(String part, double x, double y, Measure count, Measure size) {
        return target(part, x, y, number(count.value()), count, Optional.of(size));
    }

    private Target target(String part, double x, double y, String firstWords, Measure first, Optional<Measure> second) {
        boolean known = first.measured() && second.map(Measure::measured).orElse(true);
        String text = known
                ? CutawayTexts.get(
                        "label." + part,
                        firstWords,
                        second.map(measure -> words.length(measure.value())).orElse(""))
                : CutawayTexts.get("name." + part) + ": " + CutawayTexts.get("unknown");
        return new Target(text, x, y, known);
    }

    /** Puts the words at the height of what they name. */
    private static void beside(List<Label> labels, List<Target> targets, double x, Label.Side side) {
        for (Target target : targets) {
            labels.add(new Label(target.text(), x, target.y(), side, target.x(), target.y(), target.measured()));
        }
    }

    static String number(double value) {
        if (!Double.isFinite(value)) {
            return CutawayTexts.get("unknown");
        }
        return new BigDecimal(value)
                .round(new MathContext(3, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
    }
}
