package org.coldpleat.model.resolve.candidate;

import java.util.List;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Measured;

/**
 * What one home or bench test of a candidate says.
 *
 * @param test key of the test, as in the case file
 * @param status {@code USABLE}, {@code WIDENED} or {@code REFUSED}
 * @param count number of readings behind the estimate
 * @param values what follows from the readings, the directly read first
 * @param steps named steps between reading and estimate, with their share of the uncertainty
 * @param outliers numbers of readings far off the others, from 0
 * @param residuals readings against the fitted curve; empty for a test without a fit
 * @param notices findings
 */
public record TestReport(
        String test,
        String status,
        int count,
        List<Value> values,
        List<Step> steps,
        List<Integer> outliers,
        List<Residual> residuals,
        List<Notice> notices) {
    /** Status of a test that gives nothing. */
    public static final String REFUSED = "REFUSED";

    public TestReport {
        values = List.copyOf(values);
        steps = List.copyOf(steps);
        outliers = List.copyOf(outliers);
        residuals = List.copyOf(residuals);
        notices = List.copyOf(notices);
    }

    /** The same with other values. */
    public TestReport withValues(List<Value> other) {
        return new TestReport(test, status, count, other, steps, outliers, residuals, notices);
    }

    /**
     * One value.
     *
     * @param key what it is
     * @param value with its spread, if it has one
     */
    public record Value(String key, Measured value) {}

    /**
     * One step.
     *
     * @param name key of its text
     * @param relativeSize what it changed, as a share of the estimate [1]
     * @param lnSigma what it adds to the relative standard uncertainty, in root sum of squares [1]
     */
    public record Step(String name, double relativeSize, double lnSigma) {}

    /**
     * One reading against the curve.
     *
     * @param flow [m3/s]
     * @param reading pressure difference [Pa]
     * @param residual reading less curve [Pa]
     * @param outlier true if it counts little
     */
    public record Residual(double flow, double reading, double residual, boolean outlier) {}
}
