package org.coldpleat.model.loading;

import java.util.HashMap;
import java.util.Map;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * A hot duty tabulated as it is asked for: straight lines between points evenly spaced in the logarithm of the resistance
 * ratio, with one point where the bypass valve opens, so that no line runs across the corner. Work object of one thread.
 */
@Source("linear interpolation, textbook; error step^2/8 times the second derivative")
@Validity("any ratio above 0; the duty is smooth on both sides of the opening")
public final class RatioCurve implements ServicePlan.HotDuty {
    /** Usual step in the logarithm of the ratio [1]. */
    public static final double USUAL_STEP = 0.02;

    private final ServicePlan.HotDuty exact;
    private final double origin;
    private final double step;
    private final Map<Long, ServicePlan.HotState> known = new HashMap<>();

    /**
     * A curve over a duty.
     *
     * @param exact what is tabulated
     * @param openingRatio ratio at which the valve opens [1], above 0; any ratio if it never does
     * @param step in the logarithm of the ratio [1], above 0
     */
    public RatioCurve(ServicePlan.HotDuty exact, double openingRatio, double step) {
        this.exact = exact;
        origin = Math.log(Require.positive("openingRatio", openingRatio, "1"));
        this.step = Require.positive("step", step, "1");
    }

    @Override
    public ServicePlan.HotState at(double packRatio) {
        double place = (Math.log(packRatio) - origin) / step;
        long below = (long) Math.floor(place);
        double u = place - below;
        ServicePlan.HotState low = node(below);
        ServicePlan.HotState high = node(below + 1);
        return new ServicePlan.HotState(
                low.flow() + u * (high.flow() - low.flow()),
                low.bypassShare() + u * (high.bypassShare() - low.bypassShare()),
                low.pressureDrop() + u * (high.pressureDrop() - low.pressureDrop()));
    }

    private ServicePlan.HotState node(long number) {
        return known.computeIfAbsent(number, n -> exact.at(Math.exp(origin + n * step)));
    }
}
