package org.coldpleat.ui.chart.cutaway;

import org.coldpleat.model.steady.PointResult;

/** Streams through the cut along the axis: as wide as their flow, toned by their pressure. */
final class Streams {
    private static final int ENTRIES = 5;
    private static final double LEAST_SHARE = 1e-4;
    private static final double THINNEST = 0.15;

    private final CutawaySheet sheet;
    private final SideSection side;
    private final Pressures pressures;
    private final Pen pen;
    private final double full;
    private final double share;

    /**
     * @param fullFlow flow that fills the room between can and element [m3/s]
     */
    Streams(CutawaySheet sheet, SideSection side, Pressures pressures, Pen pen, PointResult point, double fullFlow) {
        this.sheet = sheet;
        this.side = side;
        this.pressures = pressures;
        this.pen = pen;
        share = point.bypass().map(PointResult.Bypass::share).orElse(0.0);
        full = 0.85 * room() * Math.min(1, point.flow() / fullFlow);
    }

    private double room() {
        double gap = sheet.canInside().half() - sheet.elementOutside().half();
        return Math.min(4.5, Math.max(1.2, gap));
    }

    void draw() {
        if (!(full > 0)) {
            return;
        }
        for (int s = -1; s <= 1; s += 2) {
            filtered(s);
            if (share > LEAST_SHARE) {
                bypass(s);
            }
        }
    }

    private double wide(double width) {
        return Math.max(THINNEST, width);
    }

    private double at(int s, double radius) {
        return side.cx + s * radius;
    }

    private void filtered(int s) {
        double width = (1 - share) * full;
        double middle = (sheet.canInside().half() + sheet.elementOutside().half()) / 2;
        double lane = middle - (share * full) / 2;
        double under = side.plateTop - 3.2;
        pen.line(
                Role.FILTERED_STREAM,
                true,
                pressures.inlet(),
                wide(width),
                at(s, side.holeRadius),
                side.bottom + 9,
                at(s, side.holeRadius),
                under);
        double length = side.elementBottom - side.elementTop;
        double from = under;
        pen.line(
                Role.FILTERED_STREAM,
                true,
                pressures.dirty(),
                wide(width),
                at(s, side.holeRadius),
                under,
                at(s, lane),
                under);
        double bore = 0.5 * sheet.outletDiameter().half();
        double tubeLane = 0.62 * sheet.tubeInside().half();
        double before = Double.NaN;
        for (int i = 0; i < ENTRIES; i++) {
            double y = side.elementBottom - length * (i + 0.5) / ENTRIES;
            double left = width * (ENTRIES - i) / ENTRIES;
            pen.line(Role.FILTERED_STREAM, true, pressures.dirty(), wide(left), at(s, lane), from, at(s, lane), y);
            from = y;
            double middleOfPack =
                    (sheet.elementOutside().half() + sheet.elementInside().half()) / 2;
            double each = wide(width / ENTRIES);
            pen.line(Role.FILTERED_STREAM, true, pressures.dirty(), each, at(s, lane), y, at(s, middleOfPack), y);
            pen.arrow(Role.FILTERED_STREAM, pressures.behindMedium(), each, at(s, middleOfPack), y, at(s, tubeLane), y);
            if (!Double.isNaN(before)) {
                pen.line(
                        Role.FILTERED_STREAM,
                        true,
                        pressures.tube(),
                        wide(left),
                        at(s, tubeLane),
                        before,
                        at(s, tubeLane),
                        y);
            }
            before = y;
        }
        for (int i = 0; i < ENTRIES; i++) {
            double y = side.elementBottom - length * (i + 0.5) / ENTRIES;
            double above = width * (ENTRIES - i) / ENTRIES;
            double to = i == 0 ? Math.min(side.neckTop, side.elementBottom) - 1 : y + length / ENTRIES;
            pen.line(
                    Role.FILTERED_STREAM, true, pressures.tube(), wide(above), at(s, tubeLane), y, at(s, tubeLane), to);
        }
        double low = Math.min(side.neckTop, side.elementBottom) - 1;
        pen.arrow(
                Role.FILTERED_STREAM,
                0,
                wide(width),
                at(s, tubeLane),
                low,
                at(s, bore),
                low + 1.5,
                at(s, bore),
                side.bottom + 10);
    }

    private void bypass(int s) {
        double width = wide(share * full);
        switch (sheet.bypassPosition()) {
            case "dome" -> dome(s, width);
            case "base" -> base(s, width);
            case "block" ->
                pen.arrow(
                        Role.BYPASS_STREAM,
                        1,
                        width,
                        at(s, side.holeRadius + 4),
                        side.bottom + 12,
                        at(s, 3),
                        side.bottom + 12);
            default -> {
                // no valve, no stream
            }
        }
    }

    private void dome(int s, double width) {
        double middle = (sheet.canInside().half() + sheet.elementOutside().half()) / 2;
        double lane = middle + (1 - share) * full / 2;
        double over = (side.top + side.elementTop) / 2;
        double seat = 0.5 * sheet.seat().half();
        double under = side.plateTop - 3.2;
        pen.line(
                Role.BYPASS_STREAM,
                true,
                1,
                width,
                at(s, side.holeRadius),
                under + full / 2,
                at(s, lane),
                under + full / 2,
                at(s, lane),
                over + 6,
                at(s, lane - 5),
                over,
                at(s, seat),
                over,
                at(s, seat),
                side.elementTop);
        double past = sheet.seat().half() + 3;
        pen.arrow(
                Role.BYPASS_STREAM,
                1,
                width,
                at(s, seat),
                side.elementTop,
                at(s, past),
                side.elementTop + side.lift / 2 + 0.6,
                at(s, past),
                side.elementTop + 16,
                at(s, 1.5),
                side.elementTop + 26,
                at(s, 1.5),
                side.bottom + 10);
    }

    private void base(int s, double width) {
        double ring = side.ringRadius() + 1;
        double under = side.plateTop - 3.2;
        pen.arrow(
                Role.BYPASS_STREAM,
                1,
                width,
                at(s, side.holeRadius),
                under,
                at(s, ring),
                under,
                at(s, ring),
                side.elementBottom - Math.max(0.2, side.lift) / 2,
                at(s, ring + 3.2),
                side.elementBottom - side.lift - 1,
                at(s, ring + 3.2),
                side.elementBottom - 16,
                at(s, 1.5),
                side.elementBottom - 16,
                at(s, 1.5),
                side.bottom + 10);
    }
}
