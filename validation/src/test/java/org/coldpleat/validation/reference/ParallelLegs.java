package org.coldpleat.validation.reference;

import org.coldpleat.model.pleat.PleatClosure;
import org.coldpleat.model.pleat.PleatEnds;
import org.coldpleat.model.pleat.PleatGeometry;
import org.coldpleat.model.pleat.SlipChannel;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Closed form of the corrected two-channel model for parallel legs (constant gaps, equal or not) and a uniform medium.
 * The finite volumes converge to it.
 *
 * <p>{@code D(x) = a1 exp(-lambda x) + a2 exp(-lambda (L-x))}, {@code lambda^2 = 2 (k/t) (A+B)}, with
 * {@code A = (C_d + 1.5 m)/det}, {@code B = (C_u + 1.5 m)/det}, {@code n = -(m/2)/det}.
 */
@Validity("gaps constant along the leg and above 0; else use PleatPack")
@Source("derived here: two-channel equations with slip, in-plane flow, folds and mouths")
public final class ParallelLegs {
    private ParallelLegs() {}

    /**
     * Resistance of one pleat.
     *
     * @param pleat parallel-legged pleat
     * @param closure slip, in-plane ratio, folds, gap factor
     * @param mediumResistance thickness over permeability [1/m]
     * @return pressure drop over (viscosity x flow of one pleat per unit height) [1/m2]
     * @throws IllegalArgumentException if the gaps are not constant
     */
    public static double pleatResistance(PleatGeometry pleat, PleatClosure closure, double mediumResistance) {
        if (pleat.upstreamMouth() != pleat.upstreamEnd() || pleat.downstreamMouth() != pleat.downstreamEnd()) {
            throw new IllegalArgumentException("gaps must be constant along the leg, upstream ran from "
                    + pleat.upstreamMouth() + " m to " + pleat.upstreamEnd() + " m");
        }
        double length = pleat.legLength();
        double permeability = pleat.thickness() / mediumResistance;
        double inPlane = closure.inPlaneRatio() * permeability;
        double slip = Math.sqrt(inPlane) / closure.slipCoefficient();
        double hu = closure.gapFactor() * pleat.upstreamGap(0);
        double hd = closure.gapFactor() * pleat.downstreamGap(0);
        double m = 2.0 / 3 * inPlane * pleat.thickness();
        double cu = SlipChannel.conductance(hu, slip, inPlane);
        double cd = SlipChannel.conductance(hd, slip, inPlane);
        double det = (cu + m) * (cd + m) - m * m / 4;
        double a = (cd + 1.5 * m) / det;
        double b = (cu + 1.5 * m) / det;
        double along = -0.5 * m / det * length + a * b * length / (a + b);
        double lambda = Math.sqrt(2 / mediumResistance * (a + b));
        // Slopes at the ends: D'(0) = -a + (a+b) f0, D'(L) = b - (a+b) fL, f the shares through the folds;
        // f0 = g0 D0 + h0, fL = gL DL + hL from fold and stub in series.
        boolean folded = pleat.ends() == PleatEnds.FOLDED;
        double t = pleat.thickness();
        double near = folded ? SlipChannel.foldConductance(hd, t, permeability, closure.foldsOpen()) : 0;
        double far = folded ? SlipChannel.foldConductance(hu, t, permeability, closure.foldsOpen()) : 0;
        double inletStub = folded ? t / (cu + m) : 0;
        double outletStub = folded ? t / (cd + m) : 0;
        double nearSlope = near / (1 + near * inletStub);
        double farSlope = far / (1 + far * outletStub);
        double decay = Math.exp(-lambda * length);
        // unknown a1, a2: D'(0) = lambda(-a1 + a2 decay), D'(L) = lambda(-a1 decay + a2)
        double m11 = -lambda - (a + b) * nearSlope;
        double m12 = decay * (lambda - (a + b) * nearSlope);
        double m21 = -decay * (lambda - (a + b) * farSlope);
        double m22 = lambda + (a + b) * farSlope;
        double r1 = -a + (a + b) * nearSlope * inletStub;
        double r2 = b - (a + b) * farSlope * outletStub;
        double determinant = m11 * m22 - m12 * m21;
        double a1 = (r1 * m22 - m12 * r2) / determinant;
        double a2 = (m11 * r2 - m21 * r1) / determinant;
        double d0 = a1 + a2 * decay;
        double dL = a1 * decay + a2;
        double f0 = nearSlope * (d0 + inletStub);
        double fL = farSlope * (dL + outletStub);
        double mouths = folded
                ? SlipChannel.mouthLoss(hu, pleat.inletPitch(), permeability)
                        + SlipChannel.mouthLoss(hd, pleat.outletPitch(), permeability)
                : 0;
        return inletStub * (1 - f0) + outletStub * (1 - fL) + along + (a * d0 + b * dL) / (a + b) + mouths;
    }
}
