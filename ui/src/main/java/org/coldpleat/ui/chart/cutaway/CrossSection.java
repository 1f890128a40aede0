package org.coldpleat.ui.chart.cutaway;

/** The cut across the axis with every leg of every pleat, and a look at the core from near. */
final class CrossSection {
    /** Magnification of the look at the core [1]. */
    static final double NEAR = 5;

    private static final double SHOWN_DEPTH = 6;
    private static final int MOST_LEGS = 10;
    private static final double FAN = 1.4;

    private final CutawaySheet sheet;
    private final Pressures pressures;
    private final Pen pen;
    private final double inner;
    private final double outer;
    private final double lean;
    private final boolean bends;

    CrossSection(CutawaySheet sheet, Pressures pressures, Pen pen) {
        this.sheet = sheet;
        this.pressures = pressures;
        this.pen = pen;
        double half = sheet.thickness().half();
        inner = sheet.elementInside().half() + half;
        double room = sheet.elementOutside().half() - half;
        double leg = sheet.legLength().value() - sheet.thickness().value();
        outer = Math.min(room, inner + Math.max(1, leg));
        double cosine = (inner * inner + outer * outer - leg * leg) / (2 * inner * outer);
        bends = cosine < inner / outer;
        lean = leg > outer - inner ? Math.acos(Math.max(cosine, inner / outer)) : 0;
    }

    /** True if a leg is longer than any straight line it could lie on: it must be bent, and is drawn straight. */
    boolean legsBend() {
        return bends;
    }

    void draw(double cx, double cy) {
        boolean can = sheet.canDiameter().measured();
        pen.oval(
                Role.CAN,
                can,
                0,
                cx,
                cy,
                sheet.canDiameter().half(),
                sheet.canDiameter().half());
        pen.oval(
                Role.OIL,
                true,
                pressures.dirty(),
                cx,
                cy,
                sheet.canInside().half(),
                sheet.canInside().half());
        double core = sheet.elementInside().half();
        if (!sheet.pleatCount().measured()) {
            pen.oval(
                    Role.MEDIUM,
                    false,
                    0,
                    cx,
                    cy,
                    sheet.elementOutside().half(),
                    sheet.elementOutside().half());
        }
        pen.oval(Role.OIL, true, pressures.behindMedium(), cx, cy, core, core);
        if (sheet.pleatCount().measured()) {
            star(cx, cy);
        }
        double r = sheet.tubeInside().half();
        double wall = sheet.tubeWall().value();
        pen.oval(Role.TUBE, sheet.tubeInside().measured(), 0, cx, cy, r + wall, r + wall);
        pen.oval(Role.OIL, true, pressures.tube(), cx, cy, r, r);
    }

    private void star(double cx, double cy) {
        int legs = 2 * sheet.pleatCount().rounded();
        double step = 2 * Math.PI / legs;
        double t = sheet.thickness().value();
        boolean known = sheet.thickness().measured();
        for (int k = 0; k < legs; k++) {
            double a = k * step;
            boolean fold = k % 2 == 0;
            double radius = fold ? outer : inner;
            double turn = fold ? lean : 0;
            pen.line(
                    Role.MEDIUM,
                    known,
                    0,
                    t,
                    cx + radius * Math.sin(a + turn),
                    cy - radius * Math.cos(a + turn),
                    cx + radius * Math.sin(a + turn + step),
                    cy - radius * Math.cos(a + turn + step));
        }
        for (int k = 0; k < legs; k++) {
            leg(cx, cy, k * step, 1, 1, cx, cy);
        }
    }

    /** One leg from the core outward: a share of its length, drawn larger about a point. */
    private void leg(double cx, double cy, double angle, double share, double scale, double atX, double atY) {
        double x1 = inner * Math.sin(angle);
        double y1 = -inner * Math.cos(angle);
        double x2 = x1 + share * (outer * Math.sin(angle + lean) - x1);
        double y2 = y1 + share * (-outer * Math.cos(angle + lean) - y1);
        double length = Math.hypot(x2 - x1, y2 - y1);
        double nx = -(y2 - y1) / length * sheet.thickness().half();
        double ny = (x2 - x1) / length * sheet.thickness().half();
        double[] xy = {x1 + nx, y1 + ny, x2 + nx, y2 + ny, x2 - nx, y2 - ny, x1 - nx, y1 - ny};
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = atX + scale * (cx + xy[i] - atX);
            xy[i + 1] = atY + scale * (cy + xy[i + 1] - atY);
        }
        pen.area(Role.MEDIUM, sheet.thickness().measured(), 0, xy);
    }

    /** Legs at the core, enlarged; the core lies below. */
    void drawNear(double cx, double bottomY) {
        if (!sheet.pleatCount().measured()) {
            return;
        }
        double step = Math.PI / sheet.pleatCount().value();
        double share = Math.min(1, SHOWN_DEPTH / Math.max(1, outer - inner));
        double spread = FAN * NEAR * Math.PI * inner / sheet.pleatCount().value();
        int shown = Math.max(2, Math.min(MOST_LEGS, (int) (sheet.canDiameter().value() / spread)));
        for (int k = 0; k < shown; k++) {
            leg(cx, bottomY + inner, (k - (shown - 1) / 2.0) * step - lean * share / 3, share, NEAR, cx, bottomY);
        }
    }
}
