package org.coldpleat.model.loading;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Require;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;
import org.coldpleat.shared.source.Validity;

/**
 * Dirt mass per area that media of a family commonly hold at the end of a multi-pass test, for users without a test
 * result of their own. The weakest evidence of all: it stands among the assumptions of a verdict.
 */
@Source("common practice, no source")
@Validity("ISO medium test dust, terminal pressure drop 70 kPa to 200 kPa; depends strongly on it, on the face velocity"
        + " and on the dust")
public enum TypicalCapacity {
    /** Resin-treated cellulose, 5 to 15 mg/cm2. */
    CELLULOSE(0.05, 0.15),
    /** Cellulose with synthetic fibers, 8 to 20 mg/cm2. */
    BLEND(0.08, 0.20),
    /** Glass micro-fiber, 15 to 35 mg/cm2. */
    GLASS(0.15, 0.35),
    /** Of no known family, 5 to 35 mg/cm2. */
    ANY(0.05, 0.35);

    /** mg/cm2 in a kg/m2. */
    private final double low;

    private final double high;

    TypicalCapacity(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /** Lower end of the common range [kg/m2]. */
    public double low() {
        return low;
    }

    /** Upper end of the common range [kg/m2]. */
    public double high() {
        return high;
    }

    /** Capacity [kg/m2] as a log-normal value whose 95 % band is the common range, marked typical. */
    public Measured capacity() {
        return new Measured(
                Kind.BASIS_WEIGHT,
                Math.sqrt(low * high),
                Math.log(high / low) / (2 * COVERAGE_95),
                Spread.LOG_NORMAL,
                Provenance.TYPICAL,
                1,
                "");
    }

    /**
     * The blocking law at the middle of the range. K is inverse to the capacity, so the spread of ln K is that of the
     * logarithm of {@link #capacity()}.
     *
     * @param exponent n [1], at least 0
     * @param endRatio terminal over clean pressure drop of the element in such a test [1], above 1
     */
    public BlockingLaw law(double exponent, double endRatio) {
        Require.above("endRatio", endRatio, 1, "1");
        return BlockingLaw.reaching(exponent, capacity().value(), endRatio);
    }

    /** The finding that a typical capacity stands in. */
    public Notice notice(String place) {
        return Notice.of(
                "loading.capacityTypical",
                Severity.WARNING,
                place,
                new Shown.Range(new Amount(Look.FINE_DIRT, low), new Amount(Look.FINE_DIRT, high)));
    }
}
