package org.coldpleat.model.flow;

/** Follows a law that has nothing to find inside. */
final class PlainFollower implements DropFollower {
    private final PressureDropLaw law;
    private Fluid fluid;
    private double drop;
    private double slope;

    PlainFollower(PressureDropLaw law) {
        this.law = law;
    }

    @Override
    public void fill(Fluid other) {
        fluid = other;
    }

    @Override
    public void look(double flow, boolean exact) {
        Drop at = law.at(flow, fluid);
        drop = at.pressureDrop();
        slope = at.slope();
    }

    @Override
    public double drop() {
        return drop;
    }

    @Override
    public double slope() {
        return slope;
    }

    @Override
    public double miss() {
        return 0;
    }

    @Override
    public boolean converged() {
        return true;
    }
}
