package org.coldpleat.model.pleat;

/**
 * The two-channel equations of one pleat, integrated by the classical Runge-Kutta rule and shot from the inlet end to the
 * condition at the outlet end: a second way to what the finite volumes find. Pressures are over viscosity and flow per unit
 * height.
 *
 * <p>With q the flow on the upstream side: {@code [q; 1 - q] = -[[C_u + m, m/2], [m/2, C_d + m]] [p_u'; p_d']} and
 * {@code q' = -2 (p_u - p_d)/(R cos)}. The folds take shares f of the flow across fold and stub,
 * {@code f = K (p + Z (1 - f))}, with p the difference at that end of the leg.
 */
final class IntegratedPleat {
    private static final int STEPS = 4000;

    private final PleatGeometry pleat;
    private final PleatClosure closure;
    private final double resistance;
    private final double sheetPermeability;
    private final double slip;
    private final double length;
    private final double cosine;
    private final double[] difference = new double[STEPS + 1];

    private double downstreamEnd;

    /** Pressure drop of the pleat [1/m2]. */
    final double total;

    /** Share of the flow through both folds [1]. */
    final double foldShare;

    IntegratedPleat(PleatGeometry pleat, PleatClosure closure, double resistance) {
        this.pleat = pleat;
        this.closure = closure;
        this.resistance = resistance;
        double permeability = pleat.thickness() / resistance;
        sheetPermeability = closure.inPlaneRatio() * permeability;
        slip = Math.sqrt(sheetPermeability) / closure.slipCoefficient();
        boolean folded = pleat.ends() == PleatEnds.FOLDED;
        double thickness = pleat.thickness();
        length = folded ? pleat.pleatDepth() - 2 * thickness : pleat.pleatDepth();
        double half = (pleat.upstreamMouth() - pleat.upstreamEnd()) / 2;
        cosine = length / Math.sqrt(length * length + half * half);
        double near = folded ? fold(closure.gapFactor() * pleat.downstreamGap(0), permeability) : 0;
        double far = folded ? fold(closure.gapFactor() * pleat.upstreamGap(1), permeability) : 0;
        // the stubs between the fold crests: gap of the channel half a thickness outside the leg
        double outside = thickness / 2 / length;
        double inlet =
                folded ? stub(pleat.upstreamGap(0) + outside * (pleat.upstreamMouth() - pleat.upstreamEnd())) : 0;
        double outlet =
                folded ? stub(pleat.downstreamGap(1) + outside * (pleat.downstreamMouth() - pleat.downstreamEnd())) : 0;
        double scale = resistance / length;
        double missAtNothing = miss(0, near, inlet, far, outlet);
        double missAtScale = miss(scale, near, inlet, far, outlet);
        double start = scale * missAtNothing / (missAtNothing - missAtScale);
        miss(start, near, inlet, far, outlet);
        double nearShare = share(near, inlet, difference[0]);
        double farShare = share(far, outlet, difference[STEPS]);
        foldShare = nearShare + farShare;
        double mouths = folded
                ? mouth(closure.gapFactor() * pleat.upstreamGap(0), pleat.inletPitch())
                        + mouth(closure.gapFactor() * pleat.downstreamGap(1), pleat.outletPitch())
                : 0;
        total = start - downstreamEnd + inlet * (1 - nearShare) + outlet * (1 - farShare) + mouths;
    }

    /** Pressure across the leg at a place, 0 at the inlet end to 1 [1/m2]. */
    double difference(double place) {
        double at = place * STEPS;
        int i = Math.min((int) at, STEPS - 1);
        return difference[i] + (at - i) * (difference[i + 1] - difference[i]);
    }

    /** What the far end lacks when the difference at the inlet end is as stated. */
    private double miss(double start, double near, double inlet, double far, double outlet) {
        double[] state = {1 - share(near, inlet, start), start, 0};
        double h = length / STEPS;
        difference[0] = start;
        for (int i = 0; i < STEPS; i++) {
            double place = (double) i / STEPS;
            double[] k1 = slope(place, state);
            double[] k2 = slope(place + 0.5 / STEPS, moved(state, k1, h / 2));
            double[] k3 = slope(place + 0.5 / STEPS, moved(state, k2, h / 2));
            double[] k4 = slope(place + 1.0 / STEPS, moved(state, k3, h));
            for (int k = 0; k < 3; k++) {
                state[k] += h / 6 * (k1[k] + 2 * k2[k] + 2 * k3[k] + k4[k]);
            }
            difference[i + 1] = state[1] - state[2];
        }
        downstreamEnd = state[2];
        return state[0] - share(far, outlet, difference[STEPS]);
    }

    private double[] slope(double place, double[] state) {
        double m = 2.0 / 3 * sheetPermeability * pleat.thickness() * cosine;
        double up = channel(pleat.upstreamGap(place)) + m;
        double down = channel(pleat.downstreamGap(place)) + m;
        double determinant = up * down - m * m / 4;
        double q = state[0];
        double upstream = -(down * q - m / 2 * (1 - q)) / determinant;
        double downstream = -(up * (1 - q) - m / 2 * q) / determinant;
        return new double[] {-2 * (state[1] - state[2]) / (resistance * cosine), upstream, downstream};
    }

    private static double[] moved(double[] state, double[] slope, double step) {
        return new double[] {state[0] + step * slope[0], state[1] + step * slope[1], state[2] + step * slope[2]};
    }

    private static double share(double fold, double stub, double difference) {
        return fold * (difference + stub) / (1 + fold * stub);
    }

    /** Plane channel with slip and a boundary layer in both sheets. */
    private double channel(double gap) {
        double h = closure.gapFactor() * gap;
        return h * h * h / 12 + h * h * slip / 2 + 2 * h * sheetPermeability;
    }

    private double stub(double straight) {
        double gap = Math.max(pleat.gapFloor(), straight);
        return pleat.thickness() / (channel(gap) + 2.0 / 3 * sheetPermeability * pleat.thickness());
    }

    private double fold(double width, double permeability) {
        double w = width / pleat.thickness();
        return permeability * (0.92 + (closure.foldsOpen() ? w + 0.16 * Math.min(1, 5 * w) : 0));
    }

    private static double mouth(double gap, double pitch) {
        double x = gap / pitch;
        return 4.99 * (1 - 0.41 * x * x - 0.13 * x * x * x * x) / (gap * gap);
    }
}
