package org.coldpleat.model.valve;

import org.coldpleat.model.flow.Drop;
import org.coldpleat.model.flow.DropFollower;
import org.coldpleat.model.flow.FlowWithSlope;
import org.coldpleat.model.flow.Fluid;

/** Follows the drop over a flap while its flow settles. */
final class FlapFollower implements DropFollower {
    private final FlapValve flap;
    private Fluid fluid;
    private double flow;
    private double size;
    private double slope;
    private double miss;
    private boolean known;

    FlapFollower(FlapValve flap) {
        this.flap = flap;
    }

    @Override
    public void fill(Fluid other) {
        fluid = other;
    }

    @Override
    public void look(double nextFlow, boolean exact) {
        double wanted = Math.abs(nextFlow);
        double moved = wanted - Math.abs(flow);
        flow = nextFlow;
        if (exact
                || wanted == 0
                || !(stepped(size + slope * moved, wanted) || stepped(flap.cornerless(wanted, fluid), wanted))) {
            Drop found = flap.at(wanted, fluid);
            size = found.pressureDrop();
            slope = found.slope();
            miss = 0;
        }
        known = true;
    }

    private boolean stepped(double from, double wanted) {
        if (!known || !(from > 0)) {
            return false;
        }
        FlowWithSlope found = flap.passage(from, fluid);
        double missing = wanted - found.flowRate();
        miss = Math.abs(missing) / wanted;
        size = Math.max(0, from + missing / found.slope());
        slope = 1 / found.slope();
        return miss <= FAR;
    }

    @Override
    public double drop() {
        return Math.copySign(size, flow);
    }

    @Override
    public double slope() {
        return slope;
    }

    @Override
    public double miss() {
        return miss;
    }

    @Override
    public boolean converged() {
        return true;
    }
}
