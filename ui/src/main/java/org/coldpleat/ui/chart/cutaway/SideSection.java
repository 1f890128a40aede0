package org.coldpleat.ui.chart.cutaway;

import org.coldpleat.model.steady.PointResult;

/** The cut along the axis, outlet down. */
final class SideSection {
    private static final double CAP = 0.6;
    private static final double DOME = 0.16;
    private static final double LID = 0.9;
    private static final double NECK_WALL = 1.5;

    private final CutawaySheet sheet;
    private final Pressures pressures;
    private final Pen pen;
    final double cx;
    final double top;
    final double bottom;
    final double plateTop;
    final double neckTop;
    final double elementTop;
    final double elementBottom;
    final double holeRadius;
    final double lift;

    SideSection(CutawaySheet sheet, PointResult point, Pressures pressures, Pen pen, double cx, double top) {
        this.sheet = sheet;
        this.pressures = pressures;
        this.pen = pen;
        this.cx = cx;
        this.top = top;
        bottom = top + sheet.canLength().value();
        plateTop = bottom - sheet.plateThickness().value();
        neckTop = bottom - sheet.outletLength().value();
        double inside = top + wall();
        double spare = Math.max(0, plateTop - inside - sheet.elementLength().value());
        elementBottom = plateTop - 0.45 * spare;
        elementTop = elementBottom - sheet.elementLength().value();
        double inner = sheet.outletDiameter().half()
                + NECK_WALL
                + sheet.inletDiameter().half();
        double underLip = sheet.flapLip().half() - sheet.flapLength().half();
        double outer = sheet.gasketInside().half() - sheet.inletDiameter().half();
        holeRadius = Math.max(inner, Math.min(outer, sheet.flapPresent() ? underLip : (inner + outer) / 2));
        lift = point.bypass().map(PointResult.Bypass::liftShare).orElse(0.0)
                * sheet.largestLift().value();
    }

    private double wall() {
        return Math.max(0.2, (sheet.canDiameter().value() - sheet.canInside().value()) / 2);
    }

    double ringRadius() {
        return Math.max(sheet.seat().half(), sheet.outletDiameter().half() + NECK_WALL + 1.2);
    }

    void draw() {
        can();
        element();
        tube();
        plate();
        flap();
        if (sheet.isValveInside()) {
            valve();
        }
    }

    private void can() {
        double r = sheet.canDiameter().half();
        boolean known = sheet.canDiameter().measured() && sheet.canLength().measured();
        pen.area(Role.CAN, known, 0, dome(r, top));
        pen.area(Role.OIL, true, pressures.dirty(), dome(r - wall(), top + wall()));
    }

    /** Outline with rounded shoulders. */
    private double[] dome(double r, double y) {
        double round = DOME * sheet.canDiameter().value();
        int steps = 12;
        double[] xy = new double[4 * (steps + 1) + 4];
        for (int i = 0; i <= steps; i++) {
            double angle = Math.PI / 2 * i / steps;
            xy[2 * i] = cx - r + round * (1 - Math.cos(angle));
            xy[2 * i + 1] = y + round * (1 - Math.sin(angle));
            xy[4 * steps + 2 - 2 * i] = cx + r - round * (1 - Math.cos(angle));
            xy[4 * steps + 3 - 2 * i] = xy[2 * i + 1];
        }
        int n = 4 * (steps + 1);
        xy[n] = cx + r;
        xy[n + 1] = bottom;
        xy[n + 2] = cx - r;
        xy[n + 3] = bottom;
        return xy;
    }

    private void element() {
        double ro = sheet.elementOutside().half();
        double ri = sheet.elementInside().half();
        boolean known =
                sheet.elementOutside().measured() && sheet.elementLength().measured();
        pen.box(Role.OIL, true, pressures.behindMedium(), cx - ri, elementTop, cx + ri, elementBottom);
        for (int side = -1; side <= 1; side += 2) {
            pen.box(Role.MEDIUM, known, 0, cx + side * ri, elementTop, cx + side * ro, elementBottom);
            if (sheet.buried().measured()) {
                double glue = sheet.buried().value();
                pen.box(Role.GLUE, true, 0, cx + side * ri, elementTop, cx + side * ro, elementTop + glue);
                pen.box(Role.GLUE, true, 0, cx + side * ri, elementBottom - glue, cx + side * ro, elementBottom);
            }
            double topHole =
                    sheet.bypassPosition().equals("dome") ? sheet.seat().half() : 0;
            double lowHole = sheet.bypassPosition().equals("base")
                    ? ringRadius() + 2.0
                    : sheet.tubeInside().half();
            pen.box(Role.END_CAP, true, 0, cx + side * topHole, elementTop - CAP, cx + side * ro, elementTop);
            pen.box(Role.END_CAP, true, 0, cx + side * lowHole, elementBottom, cx + side * ro, elementBottom + CAP);
        }
    }

    private void tube() {
        double r = sheet.tubeInside().half();
        double wall = sheet.tubeWall().value();
        boolean known = sheet.tubeInside().measured();
        pen.box(Role.OIL, true, pressures.tube(), cx - r, elementTop, cx + r, elementBottom);
        for (int side = -1; side <= 1; side += 2) {
            pen.box(Role.TUBE, known, 0, cx + side * r, elementTop, cx + side * (r + wall), elementBottom);
        }
        if (sheet.holeCount().measured() && sheet.holeDiameter().measured()) {
            openings(
                    sheet.holeCount().rounded(),
                    sheet.holeDiameter().value(),
                    sheet.holeDiameter().value());
        } else if (sheet.louverCount().measured() && sheet.louverWidth().measured()) {
            openings(
                    sheet.louverCount().rounded(),
                    sheet.louverWidth().value(),
                    sheet.louverLength().value());
        }
    }

    /** The back half of the tube as one looks into it: every second opening of all, foreshortened toward the edges. */
    private void openings(int count, double across, double along) {
        double r = sheet.tubeInside().half();
        double length = sheet.elementLength().value();
        int rows = rows(count, across, along);
        int each = (int) Math.ceil((double) count / rows);
        for (int row = 0, left = count; row < rows; row++) {
            int here = Math.min(each, left);
            left -= here;
            double y = elementTop + length * (row + 0.5) / rows;
            for (int i = 0; i < here; i++) {
                double angle = 2 * Math.PI * (i + 0.25 + 0.5 * (row % 2)) / here;
                if (Math.sin(angle) > 0.02) {
                    double a = Math.max(0.05, across / 2 * Math.sin(angle));
                    pen.oval(Role.TUBE_OPENING, true, 0, cx + r * Math.cos(angle), y, a, along / 2);
                }
            }
        }
    }

    /** Rows that leave about the same room along as across. */
    private int rows(int count, double across, double along) {
        double around = Math.PI * sheet.tubeInside().value() / across;
        double rows = Math.sqrt(count * sheet.elementLength().value() / along / around);
        return Math.max(1, Math.min(count, (int) Math.round(rows)));
    }

    private void plate() {
        double r = sheet.canInside().half();
        double hole = sheet.inletDiameter().half();
        double bore = sheet.outletDiameter().half();
        boolean known = sheet.plateThickness().measured();
        for (int side = -1; side <= 1; side += 2) {
            pen.box(Role.PLATE, known, 0, cx + side * (holeRadius + hole), plateTop, cx + side * r, bottom);
            pen.box(Role.PLATE, known, 0, cx + side * bore, plateTop, cx + side * (holeRadius - hole), bottom);
            pen.box(
                    Role.OIL,
                    sheet.inletDiameter().measured(),
                    pressures.inlet(),
                    cx + side * (holeRadius - hole),
                    plateTop,
                    cx + side * (holeRadius + hole),
                    bottom);
            pen.box(
                    Role.PLATE,
                    sheet.outletLength().measured(),
                    0,
                    cx + side * bore,
                    neckTop,
                    cx + side * (bore + NECK_WALL),
                    plateTop);
            pen.box(
                    Role.RUBBER,
                    sheet.gasketThickness().measured(),
                    0,
                    cx + side * sheet.gasketInside().half(),
                    bottom,
                    cx + side * sheet.gasketOutside().half(),
                    bottom + sheet.gasketThickness().value());
        }
        pen.box(Role.OIL, sheet.outletDiameter().measured(), 0, cx - bore, neckTop, cx + bore, bottom);
    }

    private void flap() {
        if (!sheet.flapPresent()) {
            return;
        }
        double lip = sheet.flapLip().half();
        double root = lip - sheet.flapLength().value();
        double t = sheet.flapThickness().value();
        boolean known = sheet.flapLip().measured() && sheet.flapLength().measured();
        for (int side = -1; side <= 1; side += 2) {
            pen.area(
                    Role.RUBBER,
                    known,
                    0,
                    cx + side * root,
                    plateTop,
                    cx + side * root,
                    plateTop - t,
                    cx + side * lip,
                    plateTop - t - 1.2,
                    cx + side * lip,
                    plateTop - 1.2);
        }
    }

    private void valve() {
        boolean known = sheet.seat().measured() && sheet.largestLift().measured();
        double s = sheet.seat().half() + 1;
        if (sheet.bypassPosition().equals("dome")) {
            double y = elementTop + lift;
            double hinge = sheet.bypassForm().equals("leaf") ? elementTop : y;
            pen.area(Role.VALVE, known, 0, cx - s, hinge, cx + s, y, cx + s, y + LID, cx - s, hinge + LID);
            double floor = elementTop + LID + sheet.largestLift().value() + 8;
            if (!sheet.bypassForm().equals("leaf")) {
                spring(cx, y + LID, floor, 0.6 * s);
                pen.line(Role.VALVE, known, 0, 0.6, cx - s - 1, elementTop, cx - s - 1, floor, cx - 3, floor);
                pen.line(Role.VALVE, known, 0, 0.6, cx + s + 1, elementTop, cx + s + 1, floor, cx + 3, floor);
            }
        } else {
            double y = elementBottom - lift;
            for (int side = -1; side <= 1; side += 2) {
                double inner = cx + side * (ringRadius() - 1.2);
                double outer = cx + side * (ringRadius() + 3);
                pen.box(Role.VALVE, known, 0, inner, y - LID, outer, y);
                spring(
                        (inner + outer) / 2,
                        y - LID,
                        elementBottom - LID - sheet.largestLift().value() - 8,
                        1.4);
            }
        }
    }

    private void spring(double x, double from, double to, double half) {
        int turns = 8;
        double[] xy = new double[2 * (turns + 1)];
        for (int i = 0; i <= turns; i++) {
            xy[2 * i] = x + (i % 2 == 0 ? -half : half);
            xy[2 * i + 1] = from + (to - from) * i / turns;
        }
        pen.line(Role.VALVE, true, 0, 0.45, xy);
    }
}
