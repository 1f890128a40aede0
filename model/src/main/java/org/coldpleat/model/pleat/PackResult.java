package org.coldpleat.model.pleat;

/**
 * A solved pack with the flow along its legs.
 *
 * @param whole the pack as a whole
 * @param foldShare share of the flow that passes through the folds [1]
 * @param relativeFaceVelocities face velocity over the mean one (flow / effective area) [1], double[cells], inlet end
 *     first
 * @param cellAreas medium area of each cell, both legs of all pleats [m2], double[cells]; folds not included
 */
public record PackResult(PackSummary whole, double foldShare, double[] relativeFaceVelocities, double[] cellAreas) {
    public PackResult {
        relativeFaceVelocities = relativeFaceVelocities.clone();
        cellAreas = cellAreas.clone();
    }

    @Override
    public double[] relativeFaceVelocities() {
        return relativeFaceVelocities.clone();
    }

    @Override
    public double[] cellAreas() {
        return cellAreas.clone();
    }

    /** Pressure drop over viscosity and flow [1/m3]. */
    public double resistance() {
        return whole.resistance();
    }

    /** Medium area open to flow, folds included [m2]. */
    public double effectiveArea() {
        return whole.effectiveArea();
    }

    /** Channel factor: pack resistance over that of the medium alone [1], at least 1. */
    public double channelFactor() {
        return whole.channelFactor();
    }

    /** Number of cells along the leg [1]. */
    public int cells() {
        return cellAreas.length;
    }

    /** Face velocity [m/s] in each cell at a flow [m3/s], double[cells]. */
    public double[] faceVelocities(double flowRate) {
        double[] velocity = relativeFaceVelocities();
        for (int i = 0; i < velocity.length; i++) {
            velocity[i] *= flowRate / effectiveArea();
        }
        return velocity;
    }
}
