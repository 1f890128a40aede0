package org.coldpleat.shared.quantity;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.Objects;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/**
 * A value in coherent SI with what is known about its spread and where it came from.
 *
 * @param kind what the number measures; fixes the SI unit
 * @param value best estimate in the SI unit of {@code kind}, finite
 * @param halfWidth meaning depends on {@code spread}: standard uncertainty [SI] (normal), half the interval [SI]
 *     (rectangular), standard uncertainty of ln(value) [1] (log-normal), 0 (none)
 * @param spread shape of the distribution
 * @param provenance where the value came from
 * @param repeats number of readings behind the value, at least 1
 * @param written the text as the user wrote it, for echoing; empty if the program made the value
 */
public record Measured(
        Kind kind, double value, double halfWidth, Spread spread, Provenance provenance, int repeats, String written) {
    public Measured {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(spread, "spread");
        Objects.requireNonNull(provenance, "provenance");
        Objects.requireNonNull(written, "written");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value of " + kind + " must be finite, was " + value);
        }
        if (!(halfWidth >= 0) || Double.isInfinite(halfWidth)) {
            throw new IllegalArgumentException("halfWidth must be finite and at least 0, was " + halfWidth);
        }
        if (repeats < 1) {
            throw new IllegalArgumentException("repeats must be at least 1, was " + repeats);
        }
        if (spread == Spread.LOG_NORMAL && !(value > 0)) {
            throw new IllegalArgumentException("a log-normal value must be above 0, was " + value);
        }
    }

    /** A value without spread. */
    public static Measured exact(Kind kind, double value, Provenance provenance) {
        return new Measured(kind, value, 0, Spread.NONE, provenance, 1, "");
    }

    /** A value that lies between two limits, any of them equally likely. */
    public static Measured between(Kind kind, double low, double high, Provenance provenance) {
        if (!(low <= high)) {
            throw new IllegalArgumentException("low " + low + " must not exceed high " + high);
        }
        return new Measured(kind, (low + high) / 2, (high - low) / 2, Spread.RECTANGULAR, provenance, 1, "");
    }

    /** A value known within a factor: {@code lnSigma} is the standard uncertainty of its natural logarithm [1]. */
    public static Measured factor(Kind kind, double value, double lnSigma, Provenance provenance) {
        return new Measured(kind, value, lnSigma, Spread.LOG_NORMAL, provenance, 1, "");
    }

    /** A value of which 95 of 100 lie between it divided and multiplied by a factor [1], above 1. */
    public static Measured within(Kind kind, double value, double factor, Provenance provenance) {
        return factor(kind, value, Math.log(factor) / COVERAGE_95, provenance);
    }

    /** Standard uncertainty in the SI unit of the kind (first order for a log-normal value). */
    @Source("JCGM 100:2008 (GUM), 4.3.7 for the rectangular distribution")
    public double standardUncertainty() {
        return switch (spread) {
            case NONE -> 0;
            case NORMAL -> halfWidth;
            case RECTANGULAR -> halfWidth / Math.sqrt(3);
            case LOG_NORMAL -> value * halfWidth;
        };
    }

    /** Lower end: of the interval if rectangular, else of the 95 % band. */
    public double low() {
        return switch (spread) {
            case NONE -> value;
            case NORMAL -> value - COVERAGE_95 * halfWidth;
            case RECTANGULAR -> value - halfWidth;
            case LOG_NORMAL -> value * Math.exp(-COVERAGE_95 * halfWidth);
        };
    }

    /** Upper end: of the interval if rectangular, else of the 95 % band. */
    public double high() {
        return switch (spread) {
            case NONE -> value;
            case NORMAL -> value + COVERAGE_95 * halfWidth;
            case RECTANGULAR -> value + halfWidth;
            case LOG_NORMAL -> value * Math.exp(COVERAGE_95 * halfWidth);
        };
    }

    /** The same value with another provenance. */
    public Measured from(Provenance other) {
        return new Measured(kind, value, halfWidth, spread, other, repeats, written);
    }

    /** The same value with another spread. */
    public Measured withSpread(double newHalfWidth, Spread newSpread) {
        return new Measured(kind, value, newHalfWidth, newSpread, provenance, repeats, written);
    }
}
