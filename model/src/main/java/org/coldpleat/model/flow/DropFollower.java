package org.coldpleat.model.flow;

/**
 * A pressure drop that is followed while its flow settles: what it has to find inside moves one Newton step at each look,
 * so that it settles together with the flow. Work object of one thread; what it found is where it starts the next time.
 */
public interface DropFollower {
    /** Relative miss that leaves nothing but rounding after its step [1]. */
    double SETTLED = 1e-8;

    /** Relative miss from which one step is not enough, so that an inexact look looks exactly [1]. */
    double FAR = 0.05;

    /** Takes other oil. */
    void fill(Fluid fluid);

    /**
     * Looks at a flow [m3/s], any sign.
     *
     * @param exact true to find everything inside to rounding; false to move one step, and to say how far that was
     */
    void look(double flow, boolean exact);

    /** Pressure drop [Pa] at the flow looked at, what is missing inside made up for to first order. */
    double drop();

    /** d(drop)/d(flow) [Pa s/m3], above 0. */
    double slope();

    /** How far from settled it was before the last step, relative [1]; the drop is off by about its square. */
    double miss();

    /** False if what is inside was not found. */
    boolean converged();
}
