package org.coldpleat.model.pleat;

import java.util.Arrays;

/** Elements along a leg for a uniform medium: the gaps are smooth within each, and they crowd where a gap may close. */
final class PleatMesh {
    /** Elements from one bend of the gaps to the next [1]; see docs/model/pleat-pack.md for the error that they leave. */
    private static final int ELEMENTS = 12;

    /** A bend nearer than this to an end of the leg or to another one does not get elements of its own [1]. */
    private static final double NEAREST = 1e-6;

    private static final double[] GRADED = graded();

    private PleatMesh() {}

    /** Places where elements meet, over the depth [1]: from 0 to 1, rising. */
    static double[] of(PleatGeometry geometry) {
        double[] bends = bends(geometry);
        double[] mesh = new double[(bends.length - 1) * ELEMENTS + 1];
        for (int i = 1; i < bends.length; i++) {
            for (int j = 1; j <= ELEMENTS; j++) {
                mesh[(i - 1) * ELEMENTS + j] = bends[i - 1] + (bends[i] - bends[i - 1]) * GRADED[j];
            }
        }
        return mesh;
    }

    /** Both ends of the leg, and where a gap starts or ceases to be held by the floor or by the other leg. */
    private static double[] bends(PleatGeometry geometry) {
        double floor = geometry.gapFloor();
        double upstreamOuter = geometry.upstreamMouth() - floor;
        double upstreamInner = geometry.upstreamEnd() - floor;
        double downstreamOuter = geometry.downstreamEnd() - floor;
        double downstreamInner = geometry.downstreamMouth() - floor;
        double[] places = {
            0,
            crossing(upstreamOuter, upstreamInner),
            crossing(downstreamOuter, downstreamInner),
            crossing(upstreamOuter + downstreamOuter, upstreamInner + downstreamInner),
            1
        };
        Arrays.sort(places);
        double[] bends = new double[places.length];
        int count = 1;
        for (double place : places) {
            if (place - bends[count - 1] > NEAREST && place < 1 - NEAREST) {
                bends[count++] = place;
            }
        }
        bends[count++] = 1;
        return Arrays.copyOf(bends, count);
    }

    /** Where a straight line passes 0, 0 if nowhere between the ends. */
    private static double crossing(double outer, double inner) {
        return outer * inner < 0 ? outer / (outer - inner) : 0;
    }

    private static double[] graded() {
        double[] graded = new double[ELEMENTS + 1];
        for (int i = 0; i <= ELEMENTS; i++) {
            double left = (double) i * i;
            double right = (double) (ELEMENTS - i) * (ELEMENTS - i);
            graded[i] = left / (left + right);
        }
        return graded;
    }
}
