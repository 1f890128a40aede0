package org.coldpleat.model.loading;

import java.util.Arrays;
import org.coldpleat.shared.quantity.Require;

/**
 * Classes of particle size between ascending edges. Inside a class the dust volume is taken as spread evenly over the
 * logarithm of the size.
 *
 * @param edges class edges [m], double[count + 1], ascending, all above 0; class i lies from edge i to edge i + 1
 */
public record SizeClasses(double[] edges) {
    public SizeClasses {
        edges = edges.clone();
        Require.atLeast("number of edges", edges.length, 2, "1");
        Require.positive("lowest edge", edges[0], "m");
        for (int i = 1; i < edges.length; i++) {
            Require.above("edge " + i, edges[i], edges[i - 1], "m");
        }
    }

    /**
     * Classes evenly spaced in the logarithm of the size.
     *
     * @param low lowest edge [m], above 0
     * @param high highest edge [m], above {@code low}
     * @param count number of classes, at least 1
     */
    public static SizeClasses logSpaced(double low, double high, int count) {
        Require.positive("low", low, "m");
        Require.above("high", high, low, "m");
        Require.atLeast("count", count, 1, "1");
        double[] edges = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            edges[i] = low * Math.pow(high / low, (double) i / count);
        }
        edges[count] = high;
        return new SizeClasses(edges);
    }

    /** One narrow class about a size [m], for tests of one size at a time. */
    public static SizeClasses single(double size) {
        return new SizeClasses(new double[] {size * 0.999, size * 1.001});
    }

    @Override
    public double[] edges() {
        return edges.clone();
    }

    /** Number of classes. */
    public int count() {
        return edges.length - 1;
    }

    /** Lower edge of a class [m]. */
    public double lower(int index) {
        return edges[index];
    }

    /** Upper edge of a class [m]. */
    public double upper(int index) {
        return edges[index + 1];
    }

    /** Geometric middle of a class [m]. */
    public double middle(int index) {
        return Math.sqrt(edges[index] * edges[index + 1]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SizeClasses that && Arrays.equals(edges, that.edges);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(edges);
    }

    @Override
    public String toString() {
        return "SizeClasses" + Arrays.toString(edges);
    }
}
