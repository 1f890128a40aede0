package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.model.loading.CaptureCurve;
import org.coldpleat.model.loading.CaptureEstimate;
import org.coldpleat.model.loading.RatingPair;
import org.coldpleat.model.loading.TypicalCapacity;
import org.coldpleat.model.pleat.PackCurve;
import org.coldpleat.model.typical.DefaultSpreads;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Source;

/** Blocking law and capture curve of a candidate from its sheet. */
public final class CapacityBuilder {
    /** Density of a test fluid [kg/m3]. */
    @Source("common practice, no source: hydraulic oil of the multi-pass tests, 0.87 g/cm3")
    private static final double TEST_FLUID_DENSITY = 870;

    /** Terminal over clean resistance at which a capacity per area is meant [1]. */
    @Source("common practice, no source")
    public static final double TYPICAL_END_RATIO = 8;

    private static final double HALF = 0.5;

    /** Highest ratio looked for [1]. */
    private static final double HIGHEST_RATIO = 1e4;

    private CapacityBuilder() {}

    /**
     * A blocking law and how sure it is.
     *
     * @param law law of the medium
     * @param lnSigma standard uncertainty of ln K [1]
     * @param tested true if it comes from a test of an element
     * @param notices findings
     */
    public record Blocking(BlockingLaw law, double lnSigma, boolean tested, List<Notice> notices) {}

    /** The blocking law; empty if the clean element already takes more than the terminal pressure drop of its test. */
    public static Optional<Blocking> blocking(Section sheet, BuiltCandidate candidate) {
        Section medium = sheet.section("medium").orElseThrow();
        Optional<Section> capacity = medium.section("capacity");
        List<Notice> notices = new ArrayList<>();
        Optional<Measured> written = medium.quantity("blockingExponent");
        double exponent = written.map(Measured::value).orElse(BlockingLaw.DEFAULT_EXPONENT);
        if (written.isEmpty()) {
            notices.add(BlockingLaw.exponentAssumed(candidate.name()));
        }
        double scatter = BlockingLaw.COEFFICIENT_SCATTER;
        if (capacity.isPresent() && capacity.get().has("mass")) {
            Section test = capacity.get();
            Measured mass = DefaultSpreads.complete(
                    test.pathOf("mass"), test.quantity("mass").orElseThrow());
            double spread = Math.hypot(scatter, mass.standardUncertainty() / mass.value());
            return tested(test, candidate, exponent, mass.value()).map(law -> new Blocking(law, spread, true, notices));
        }
        Optional<Measured> perArea = capacity.flatMap(one -> one.quantity("perArea"));
        if (perArea.isPresent()) {
            Measured value = DefaultSpreads.complete(capacity.get().pathOf("perArea"), perArea.get());
            double spread = Math.hypot(scatter, value.standardUncertainty() / value.value());
            BlockingLaw law = BlockingLaw.reaching(exponent, value.value(), TYPICAL_END_RATIO);
            return Optional.of(new Blocking(law, spread, false, notices));
        }
        TypicalCapacity typical =
                medium.choice("family").map(FamilyWord::capacity).orElse(TypicalCapacity.ANY);
        notices.add(typical.notice(candidate.name()));
        return Optional.of(new Blocking(
                typical.law(exponent, TYPICAL_END_RATIO),
                Math.hypot(scatter, typical.capacity().halfWidth()),
                false,
                notices));
    }

    /** The law behind a test; empty if the clean element already takes more than the terminal pressure drop. */
    private static Optional<BlockingLaw> tested(Section test, BuiltCandidate candidate, double exponent, double mass) {
        double viscosity = test.quantity("viscosity").orElseThrow().value() * TEST_FLUID_DENSITY;
        double flow = test.quantity("atFlow").orElseThrow().value();
        double own = candidate.pack().effectiveArea();
        double area = test.quantity("area").map(Measured::value).orElse(own);
        double clean = viscosity * candidate.pack().resistance() * own / area * flow;
        double terminal = test.quantity("terminalPressureDrop").orElseThrow().value();
        return terminal > clean
                ? Optional.of(BlockingLaw.reaching(exponent, mass / area, mediumRatio(candidate, terminal / clean)))
                : Optional.empty();
    }

    /** Ratio of an evenly loaded medium at which the pack resists a given number of times its clean value. */
    @Source("derived here: bisection on the pack model")
    public static double mediumRatio(BuiltCandidate candidate, double packRatio) {
        PackCurve curve = candidate.packModel().curve();
        double wanted = packRatio * candidate.pack().resistance();
        double low = 0;
        double high = Math.log(HIGHEST_RATIO);
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double found =
                    curve.at(candidate.mediumResistance() * Math.exp(middle)).resistance();
            if (found < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp(high);
    }

    /**
     * What is known of the capture of a medium.
     *
     * @param estimate curves of capture over size
     * @param halfCaught size of which the family commonly catches half [m], where the sheet has no rating
     */
    public record Capture(CaptureEstimate estimate, Optional<Measured> halfCaught) {
        /** Curves at both ends of the band of what is typical, coarse first; empty where a rating is known. */
        public List<CaptureCurve> ends() {
            return halfCaught.stream()
                    .flatMap(size -> Stream.of(size.high(), size.low()))
                    .map(size ->
                            CaptureEstimate.from(new RatingPair(size, HALF)).likely())
                    .toList();
        }

        /** Findings about a candidate of a name, where results rest on particles down to a size [m]. */
        public List<Notice> notices(String name, double finest) {
            return halfCaught
                    .map(size -> List.of(Notice.of(
                            "service.captureTypical",
                            Severity.WARNING,
                            name,
                            new Amount(Look.SIZE, size.value()),
                            new Shown.Range(new Amount(Look.SIZE, size.low()), new Amount(Look.SIZE, size.high())))))
                    .orElseGet(() -> estimate.notices(name, finest));
        }
    }

    /** Capture by the first two usable ratings, else what is typical of the family, or of any if that is not known. */
    public static Capture capture(Section sheet) {
        Section medium = sheet.section("medium").orElseThrow();
        return rated(medium).map(one -> new Capture(one, Optional.empty())).orElseGet(() -> {
            Measured size = TypicalFilter.of(
                            medium.choice("family").map(FamilyWord::halfCaught).orElse("medium.halfCaught.any"))
                    .measured();
            return new Capture(CaptureEstimate.from(new RatingPair(size.value(), HALF)), Optional.of(size));
        });
    }

    private static Optional<CaptureEstimate> rated(Section medium) {
        List<RatingPair> pairs = medium.sections("ratings").stream()
                .filter(rating -> rating.quantity("size").isPresent())
                .map(CapacityBuilder::pair)
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(RatingPair::size))
                .toList();
        if (pairs.isEmpty()) {
            return Optional.empty();
        }
        RatingPair first = pairs.get(0);
        RatingPair last = pairs.get(pairs.size() - 1);
        boolean two = last.size() > first.size() && last.efficiency() > first.efficiency();
        return Optional.of(two ? CaptureEstimate.from(first, last) : CaptureEstimate.from(first));
    }

    private static Optional<RatingPair> pair(Section rating) {
        double size = rating.quantity("size").orElseThrow().value();
        Optional<Double> efficiency = rating.quantity("efficiency").map(Measured::value);
        Optional<Double> beta = rating.quantity("beta").map(Measured::value);
        double share =
                efficiency.orElseGet(() -> beta.map(value -> 1 - 1 / value).orElse(0.0));
        return share > 0 && share < 1 ? Optional.of(new RatingPair(size, share)) : Optional.empty();
    }
}
