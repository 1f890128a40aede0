package org.coldpleat.ui.chart.cutaway;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.run.PointResult;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.UnitWords;

/** Draws a candidate cut open, to scale from its own bench sheet, as it stands at one operating point. */
public final class Cutaway {
    private static final double LEFT_OF_CAN = 0.95;
    private static final double BETWEEN_CUTS = 1.08;
    private static final double TOP = 9;
    private static final double EDGE = 2;
    private static final double ROW = 6.2;
    private static final double NEAR_ROOM = 40;

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

    private CutawayDrawing drawing(Section candidate, PointResult point, double fullFlow) {
        CutawaySheet sheet = CutawaySheet.of(candidate);
        Pressures pressures = Pressures.of(point);
        Pen pen = new Pen();
        double diameter = sheet.canDiameter().value();
        double start = LEFT_OF_CAN * diameter;
        double cx = start + diameter / 2;
        SideSection side = new SideSection(sheet, point, pressures, pen, cx, TOP);
        side.draw();
        new Streams(sheet, side, pressures, pen, point, Math.max(fullFlow, point.flow())).draw();
        double end = start + diameter;
        double acrossX = end + BETWEEN_CUTS * diameter + diameter / 2;
        CrossSection cross = new CrossSection(sheet, pressures, pen);
        cross.draw(acrossX, TOP + diameter / 2);
        double nearY = TOP + diameter + 14 + NEAR_ROOM;
        cross.drawNear(acrossX, nearY);

        List<Label> labels = new ArrayList<>();
        labels.add(heading(CutawayTexts.get("heading.side"), cx));
        labels.add(heading(CutawayTexts.get("heading.cross"), acrossX));
        labels.add(new Label(
                pleats(sheet),
                acrossX,
                TOP + diameter + 4,
                Label.Side.HEADING,
                Double.NaN,
                0,
                sheet.pleatCount().measured()));
        if (sheet.pleatCount().measured()) {
            labels.add(new Label(
                    CutawayTexts.get(
                            "heading.near", words.length(sheet.thickness().value())),
                    acrossX,
                    TOP + diameter + 11,
                    Label.Side.HEADING,
                    Double.NaN,
                    0,
                    true));
        }
        spread(labels, left(sheet, side), start - 5, Label.Side.ENDING);
        spread(labels, right(sheet, side, point), end + 5, Label.Side.BEGINNING);

        List<String> notes = new ArrayList<>();
        notes.add(CutawayTexts.get("note.custom"));
        if (cross.legsBend()) {
            notes.add(CutawayTexts.get("note.bent"));
        }
        double height = Math.max(side.bottom + 14, nearY + 2);
        return new CutawayDrawing(
                CutawayTexts.get("title", sheet.name()),
                subtitle(point),
                acrossX + diameter / 2 + 8,
                height,
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

    private static Label heading(String words, double x) {
        return new Label(words, x, TOP - 5, Label.Side.HEADING, Double.NaN, 0, true);
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

    /** Puts the words in a column, in the order of what they name, no two on one row. */
    private static void spread(List<Label> labels, List<Target> targets, double x, Label.Side side) {
        double free = 0;
        for (Target target :
                targets.stream().sorted(Comparator.comparingDouble(Target::y)).toList()) {
            double y = Math.max(target.y(), free);
            labels.add(new Label(target.text(), x, y, side, target.x(), target.y(), target.measured()));
            free = y + ROW;
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
