package org.coldpleat.model.oil;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.coldpleat.model.oil.curve.BlendedCurve;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Two oils poured together as one oil: viscosity by {@link BlendedCurve}, density by volume, the warmer of the two pour
 * points. Its band holds what is not known of either oil, taken as independent, of the share, and of the rule itself: 10 %
 * for equal parts (95 %), nothing for no share at all.
 *
 * @param main the oil that was there
 * @param added the oil poured into it
 * @param share volume share of the added oil in the whole [1], 0 to 1
 * @param shareUncertainty standard uncertainty of the share [1], at least 0
 */
@Source(
        "rule and its 10 %: as ASTM D7152, from memory; how the 10 % fade with the share, and the rest, is common practice,"
                + " no source")
@Validity("oils that mix; not meant for oils with much viscosity improver")
public record OilBlend(Oil main, Oil added, double share, double shareUncertainty) {
    /** Half-width of ln(n) of the rule for equal parts [1]. */
    private static final double RULE = Math.log(1.10);

    public OilBlend {
        Require.within("share", share, 0, 1, "1");
        Require.notNegative("shareUncertainty", shareUncertainty, "1");
    }

    /** The blend as an oil of the name of the main one. */
    public Oil oil() {
        BlendedCurve curve = new BlendedCurve(main.curve(), added.curve(), share);
        MpmsDensity density = new MpmsDensity((1 - share) * main.density().referenceDensity()
                + share * added.density().referenceDensity());
        return new Oil(
                main.name(),
                curve,
                density,
                CragoeHeat.of(density),
                pourPoint(),
                anchors(curve),
                ViscosityBand.of(
                        curve,
                        temperature -> lnSigma(curve, temperature, 1),
                        temperature -> lnSigma(curve, temperature, -1),
                        Stream.concat(main.anchors().stream(), added.anchors().stream())
                                .mapToDouble(Anchor::temperature)
                                .distinct()
                                .toArray()),
                0);
    }

    private double lnSigma(BlendedCurve curve, double temperature, int side) {
        double rule = 4 * share * (1 - share) * RULE / COVERAGE_95;
        double ofMain = curve.firstWeight(temperature) * main.band().moved(side, temperature);
        double ofAdded = curve.secondWeight(temperature) * added.band().moved(side, temperature);
        double ofShare = shareUncertainty * curve.shareSlope(temperature);
        return Math.sqrt(rule * rule + ofMain * ofMain + ofAdded * ofAdded + ofShare * ofShare);
    }

    private OptionalDouble pourPoint() {
        return Stream.of(main.pourPoint(), added.pourPoint())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .max();
    }

    /** Viscosities of the blend where both oils are known: below the coldest of them it is extrapolated. */
    private List<Anchor> anchors(BlendedCurve curve) {
        TreeSet<Double> temperatures = new TreeSet<>();
        temperatures.add(Math.max(main.lowestAnchor(), added.lowestAnchor()));
        temperatures.add(Math.max(main.highestAnchor(), added.highestAnchor()));
        if (main.hasColdAnchor() && added.hasColdAnchor()) {
            temperatures.add(Math.max(
                    main.anchors().get(1).temperature(), added.anchors().get(1).temperature()));
        }
        List<Anchor> anchors = new ArrayList<>();
        for (double temperature : temperatures) {
            anchors.add(new Anchor(
                    Anchor.Method.KINEMATIC,
                    temperature,
                    curve.kinematicViscosity(temperature),
                    (lnSigma(curve, temperature, 1) + lnSigma(curve, temperature, -1)) / 2,
                    main.anchors().get(0).provenance()));
        }
        return anchors;
    }
}
