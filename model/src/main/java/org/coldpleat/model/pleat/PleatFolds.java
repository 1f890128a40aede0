package org.coldpleat.model.pleat;

import org.coldpleat.shared.source.Source;

/**
 * What closes and opens the two channels of a pleat: the folds, the stubs between the fold crests, the mouths. Per unit
 * height and viscosity; all nothing for plugged ends.
 *
 * @param near conductance of the near fold, which closes the downstream channel [m2]
 * @param far conductance of the far fold, which closes the upstream channel [m2]
 * @param inletStub resistance of the upstream channel between the fold crests [1/m2]
 * @param outletStub resistance of the downstream channel between the fold crests [1/m2]
 * @param mouthLoss both mouths [1/m2]
 * @param stubRise of both stubs with the logarithm of the medium resistance [1/m2], inlet then outlet
 * @param mouthRise of the mouths with the logarithm of the medium resistance [1/m2]
 */
record PleatFolds(
        double near,
        double far,
        double inletStub,
        double outletStub,
        double mouthLoss,
        double[] stubRise,
        double mouthRise) {

    /** Ends of a pleat, for the medium resistance [1/m] at its near and far end. */
    static PleatFolds of(PleatGeometry geometry, PleatClosure closure, double nearMedium, double farMedium) {
        if (geometry.ends() == PleatEnds.PLUGGED) {
            return new PleatFolds(0, 0, 0, 0, 0, new double[2], 0);
        }
        double thickness = geometry.thickness();
        double factor = closure.gapFactor();
        double nearPermeability = thickness / nearMedium;
        double farPermeability = thickness / farMedium;
        double inletMouth = factor * geometry.upstreamGap(0);
        double outletMouth = factor * geometry.downstreamGap(1);
        double inletGap =
                stubGap(geometry, factor, geometry.upstreamGap(0), geometry.upstreamMouth() - geometry.upstreamEnd());
        double outletGap = stubGap(
                geometry, factor, geometry.downstreamGap(1), geometry.downstreamMouth() - geometry.downstreamEnd());
        double inletStub = stub(thickness, closure, inletGap, nearPermeability);
        double outletStub = stub(thickness, closure, outletGap, farPermeability);
        return new PleatFolds(
                nearPermeability * nearShape(geometry, closure),
                farPermeability * farShape(geometry, closure),
                inletStub,
                outletStub,
                SlipChannel.mouthLoss(inletMouth, geometry.inletPitch(), nearPermeability)
                        + SlipChannel.mouthLoss(outletMouth, geometry.outletPitch(), farPermeability),
                new double[] {
                    stubRise(thickness, closure, inletGap, nearPermeability, inletStub),
                    stubRise(thickness, closure, outletGap, farPermeability, outletStub)
                },
                SlipChannel.mouthRise(inletMouth, geometry.inletPitch(), nearPermeability)
                        + SlipChannel.mouthRise(outletMouth, geometry.outletPitch(), farPermeability));
    }

    /** Medium of both legs and folds over the pleat height [m]: what the medium alone conducts, times its resistance. */
    static double areaPerHeight(PleatGeometry geometry, PleatClosure closure) {
        double legs = 2 * geometry.legLength() / geometry.legCosine();
        return geometry.ends() == PleatEnds.PLUGGED
                ? legs
                : legs + geometry.thickness() * (nearShape(geometry, closure) + farShape(geometry, closure));
    }

    private static double nearShape(PleatGeometry geometry, PleatClosure closure) {
        return shape(closure.gapFactor() * geometry.downstreamGap(0), geometry, closure);
    }

    private static double farShape(PleatGeometry geometry, PleatClosure closure) {
        return shape(closure.gapFactor() * geometry.upstreamGap(1), geometry, closure);
    }

    private static double shape(double width, PleatGeometry geometry, PleatClosure closure) {
        return SlipChannel.foldConductance(width, geometry.thickness(), 1, closure.foldsOpen());
    }

    /** Gap half a thickness outside the end of the leg [m]. */
    private static double stubGap(PleatGeometry geometry, double factor, double gapAtEnd, double taper) {
        double gap = gapAtEnd + taper / geometry.legLength() * geometry.thickness() / 2;
        return factor * Math.max(geometry.gapFloor(), gap);
    }

    private static double stub(double thickness, PleatClosure closure, double gap, double permeability) {
        double inPlane = closure.inPlaneRatio() * permeability;
        double conductance = SlipChannel.conductance(gap, Math.sqrt(inPlane) / closure.slipCoefficient(), inPlane);
        return thickness / (conductance + 2.0 / 3 * inPlane * thickness);
    }

    @Source("derived here: derivative of the resistance of a stub")
    private static double stubRise(
            double thickness, PleatClosure closure, double gap, double permeability, double stub) {
        double inPlane = closure.inPlaneRatio() * permeability;
        double fall = SlipChannel.conductanceFall(gap, Math.sqrt(inPlane) / closure.slipCoefficient(), inPlane)
                + 2.0 / 3 * inPlane * thickness;
        return stub * stub / thickness * fall;
    }
}
