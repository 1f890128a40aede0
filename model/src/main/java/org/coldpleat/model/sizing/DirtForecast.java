package org.coldpleat.model.sizing;

import java.util.Optional;
import org.coldpleat.model.certainty.Variants;
import org.coldpleat.model.change.DirtLoad;
import org.coldpleat.model.loading.service.DutyCycle;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.CapacityBuilder;
import org.coldpleat.model.verdict.service.ServiceAnalyzer;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.shared.casefile.Section;

/** The dirt in a filter: after so long a service, or as a share of what it can hold. */
public final class DirtForecast {
    private DirtForecast() {}

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
     * A share of the dirt at which the medium resists {@link DirtLoad#FULL_RATIO} times its clean value; empty if the sheet says
     * too little.
     *
     * @param share [1], at least 0
     */
    public static Optional<DirtLoad> ofShare(ResolvedCase resolved, int position, double share) {
        double area = resolved.candidates().get(position).pack().effectiveArea();
        return blocking(resolved, position)
                .map(one -> new DirtLoad(
                        share * area * one.law().massPerArea(DirtLoad.FULL_RATIO), one.law(), one.lnSigma()));
    }

    private static Optional<CapacityBuilder.Blocking> blocking(ResolvedCase resolved, int position) {
        Section sheet = resolved.sheet(position);
        return CapacityBuilder.blocking(sheet, resolved.candidates().get(position));
    }
}
