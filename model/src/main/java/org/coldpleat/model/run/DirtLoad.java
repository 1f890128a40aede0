package org.coldpleat.model.run;

import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.loading.BlockingLaw;
import org.coldpleat.shared.casefile.Section;

/**
 * Dirt that a filter has caught, spread evenly over its medium.
 *
 * @param mass [kg], at least 0
 * @param law how the resistance of the medium grows with it
 * @param lnSigma standard uncertainty of the logarithm of that growth [1]
 */
public record DirtLoad(double mass, BlockingLaw law, double lnSigma) {
    /** Ratio of loaded to clean medium at which a filter counts as full [1]. */
    public static final double FULL_RATIO = CapacityBuilder.TYPICAL_END_RATIO;

    public DirtLoad {
        Objects.requireNonNull(law, "law");
        if (!(mass >= 0) || Double.isInfinite(mass)) {
            throw new IllegalArgumentException("mass must be finite and at least 0 kg, was " + mass);
        }
    }

    /**
     * The dirt after so long a service; empty if the case has no duty, or the sheet of the candidate says too little.
     *
     * @param seconds running time [s], above 0
     */
    public static Optional<DirtLoad> after(ResolvedCase resolved, int position, double seconds) {
        Optional<DutyCycle> duty = DutyCycle.of(resolved).map(cycle -> cycle.withHorizon(seconds));
        if (duty.isEmpty()) {
            return Optional.empty();
        }
        ServiceAnalyzer analyzer = new ServiceAnalyzer(resolved, new Variants(resolved), position, duty.get());
        ServiceResult.Candidate service = analyzer.analyze();
        if (!service.isComputed() || analyzer.law().isEmpty()) {
            return Optional.empty();
        }
        double spread = blocking(resolved, position)
                .map(one -> Math.hypot(one.lnSigma(), duty.get().dirtLnSigma()))
                .orElseThrow();
        return Optional.of(
                new DirtLoad(service.last().retained(), analyzer.law().get(), spread));
    }

    /**
     * A share of the dirt at which the medium resists {@link #FULL_RATIO} times its clean value; empty if the sheet says
     * too little.
     *
     * @param share [1], at least 0
     */
    public static Optional<DirtLoad> ofShare(ResolvedCase resolved, int position, double share) {
        double area = resolved.candidates().get(position).pack().effectiveArea();
        return blocking(resolved, position)
                .map(one -> new DirtLoad(share * area * one.law().massPerArea(FULL_RATIO), one.law(), one.lnSigma()));
    }

    private static Optional<CapacityBuilder.Blocking> blocking(ResolvedCase resolved, int position) {
        Section sheet = resolved.document().root().sections("candidates").get(position);
        return CapacityBuilder.blocking(sheet, resolved.candidates().get(position));
    }

    /** The same with the growth of the resistance moved by a number of standard uncertainties. */
    public DirtLoad moved(double deviations) {
        double factor = Math.exp(deviations * lnSigma);
        return new DirtLoad(mass, new BlockingLaw(law.exponent(), law.coefficient() * factor), lnSigma);
    }

    /** How many times its clean value the medium resists on an area [m2]; infinite if plugged. */
    double ratio(double area) {
        return law.resistanceRatio(mass / area);
    }
}
