package org.coldpleat.shared.quantity;

import org.coldpleat.shared.source.Source;

/** How far a band reaches that a normal distribution is to lie in. */
public final class Coverage {
    /** Half-width of the 95 % band with equal tails, in standard uncertainties [1]. */
    @Source("JCGM 100:2008 (GUM), table G.1: 1.960")
    public static final double COVERAGE_95 = 1.96;

    private Coverage() {}
}
