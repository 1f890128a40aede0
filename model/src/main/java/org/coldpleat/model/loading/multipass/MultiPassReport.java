package org.coldpleat.model.loading.multipass;

import java.util.List;
import org.coldpleat.shared.notice.Notice;

/**
 * A virtual multi-pass test of one candidate.
 *
 * @param title title of the case
 * @param invented true if the case says its data are invented
 * @param candidate name of the candidate
 * @param terminalReached false if the time limit came first
 * @param sizes sizes of the filtration ratios [m], double[k]
 * @param moments series over time
 * @param meanBeta filtration ratio over the whole test at and above each size [1], double[k]
 * @param injectedMass dust injected [kg]
 * @param retainedMass dust in the element at the end [kg]
 * @param retainedLow lower end of its 95 % band [kg]
 * @param retainedHigh upper end [kg]
 * @param duration of the test [s]
 * @param massClosure greatest imbalance over the size classes [1]
 * @param notices findings
 */
public record MultiPassReport(
        String title,
        boolean invented,
        String candidate,
        boolean terminalReached,
        double[] sizes,
        List<Moment> moments,
        double[] meanBeta,
        double injectedMass,
        double retainedMass,
        double retainedLow,
        double retainedHigh,
        double duration,
        double massClosure,
        List<Notice> notices) {
    /**
     * One moment of the test.
     *
     * @param time [s]
     * @param pressureDrop of the element [Pa]
     * @param retained dust in the element [kg]
     * @param upstream dust before the filter [kg/m3]
     * @param beta filtration ratio at and above each size [1], double[k]; NaN before dust has come
     */
    public record Moment(double time, double pressureDrop, double retained, double upstream, double[] beta) {}

    public MultiPassReport {
        moments = List.copyOf(moments);
        notices = List.copyOf(notices);
    }
}
