package org.coldpleat.validation.checks;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.StackWalker.Option;
import org.coldpleat.validation.checks.CheckRow.Status;

/**
 * A comparison with a value from outside that is asserted and also kept for the validation page:
 * {@code ExternalCheck.of(Topic.OIL, "density", "ASTM D1250").expected(860, "kg/m3").computed(y).within(1, "printed digits")}.
 *
 * @param topic what it is about
 * @param quantity what is compared; rows of one data set share it and are printed as one line
 * @param source published source, or {@code common practice, no source}, {@code from memory}, {@code derived here}
 * @param at which case of several, or empty
 * @param afterwards whether the tolerance was set after the deviation was known
 */
public record ExternalCheck(Topic topic, String quantity, String source, String at, boolean afterwards) {

    /** A check of a quantity against a source. */
    public static ExternalCheck of(Topic topic, String quantity, String source) {
        return new ExternalCheck(topic, quantity, source, "", false);
    }

    /** The same for one case of several, such as {@code 280 K}. */
    public ExternalCheck at(String where) {
        return new ExternalCheck(topic, quantity, source, where.replaceAll("(\\d)\\.0(?![\\d.])", "$1"), afterwards);
    }

    /** States that the tolerance was chosen after the deviation had been seen. */
    public ExternalCheck toleranceSetAfterwards() {
        return new ExternalCheck(topic, quantity, source, at, true);
    }

    /** The value of the source, in a unit; {@code 1} for none. */
    public Expected expected(double value, String unit) {
        return new Expected(this, value, unit);
    }

    /** A computed value that has limits rather than one expected value. */
    public Limited computed(double value, String unit) {
        return new Limited(this, value, unit);
    }

    /** Texts or counts that must agree to the letter. */
    public void exactly(Object expected, Object computed) {
        boolean met = expected.toString().equals(computed.toString());
        finish(expected.toString(), computed.toString(), "", "exact", "must agree to the letter", met, 0);
    }

    /** An expected value that waits for the computed one. */
    public record Expected(ExternalCheck check, double value, String unit) {
        public Compared computed(double computed) {
            return new Compared(check, value, unit, computed);
        }
    }

    /** Both values of a comparison. */
    public record Compared(ExternalCheck check, double expected, String unit, double computed) {

        /** Absolute tolerance, in the unit. */
        public void within(double tolerance, String reason) {
            String text = CheckNumbers.withUnit("± " + CheckNumbers.digits(tolerance, 3), unit);
            judge(tolerance, text, false, reason);
        }

        /** Tolerance as a part of the expected value. */
        public void withinRelative(double tolerance, String reason) {
            judge(tolerance * Math.abs(expected), "± " + CheckNumbers.percent(tolerance, 3), true, reason);
        }

        /** The expected value must lie in the band that the model states about its own value. */
        public void band(double halfWidth, String reason) {
            String text = CheckNumbers.withUnit("own band ± " + CheckNumbers.digits(halfWidth, 3), unit);
            judge(halfWidth, text, false, reason);
        }

        /** As {@link #within} on the logarithm of the ratio, for values that span decades. */
        public void withinLogarithm(double tolerance, String reason) {
            logarithm(tolerance, "± " + CheckNumbers.digits(tolerance, 3) + " in ln", reason);
        }

        /** As {@link #band} on the logarithm of the ratio. */
        public void bandOfLogarithm(double halfWidth, String reason) {
            logarithm(halfWidth, "own band ± " + CheckNumbers.digits(halfWidth, 3) + " in ln", reason);
        }

        private void logarithm(double tolerance, String toleranceText, String reason) {
            double deviation = Math.log(computed / expected);
            check.finish(
                    text(CheckNumbers.given(expected)),
                    text(CheckNumbers.computed(computed)),
                    CheckNumbers.digits(deviation, 2) + " in ln",
                    toleranceText,
                    reason,
                    Math.abs(deviation) <= tolerance,
                    Math.abs(deviation) / tolerance);
        }

        /**
         * A disagreement that stays.
         *
         * @param miss computed over expected, less one
         * @param tolerance of the miss; outside of it something has changed, for better or worse
         * @param reason why it stays
         */
        public void knownMiss(double miss, double tolerance, String reason) {
            double deviation = computed / expected - 1;
            boolean met = Math.abs(deviation - miss) <= tolerance;
            check.record(
                    text(CheckNumbers.given(expected)),
                    text(CheckNumbers.computed(computed)),
                    CheckNumbers.percent(deviation, 2),
                    "miss of " + CheckNumbers.percent(miss, 3) + " ± " + CheckNumbers.percent(tolerance, 2),
                    reason,
                    met ? Status.KNOWN_MISS : Status.FAILS,
                    Math.abs(deviation));
            assertTrue(met, () -> check + ": known miss of " + miss + " is " + deviation);
        }

        private void judge(double tolerance, String toleranceText, boolean relative, String reason) {
            double deviation = computed - expected;
            boolean met = Math.abs(deviation) <= tolerance || Double.compare(computed, expected) == 0;
            boolean rounding = tolerance <= CheckNumbers.ROUNDING * Math.abs(expected);
            double severity = rounding ? 0 : Math.abs(deviation) / tolerance;
            String shown = relative
                    ? CheckNumbers.percent(deviation / Math.abs(expected), 2)
                    : text(CheckNumbers.digits(deviation, 2));
            check.finish(
                    text(CheckNumbers.given(expected)),
                    text(CheckNumbers.computed(computed)),
                    met && (rounding || severity < CheckNumbers.NONE) ? "none" : shown,
                    toleranceText,
                    reason,
                    met,
                    severity);
        }

        private String text(String number) {
            return CheckNumbers.withUnit(number, unit);
        }
    }

    /** A computed value that waits for its limits. */
    public record Limited(ExternalCheck check, double computed, String unit) {
        /** Upper limit. */
        public void atMost(double limit, String reason) {
            limit("at most ", limit, computed <= limit, computed / limit, reason);
        }

        /** Lower limit. */
        public void atLeast(double limit, String reason) {
            limit("at least ", limit, computed >= limit, limit / computed, reason);
        }

        /** Lower limit that must be passed. */
        public void above(double limit, String reason) {
            limit("above ", limit, computed > limit, limit / computed, reason);
        }

        /** Upper limit that must not be reached. */
        public void below(double limit, String reason) {
            limit("below ", limit, computed < limit, computed / limit, reason);
        }

        /** Lower and upper limit. */
        public void between(double low, double high, String reason) {
            double share = Math.abs(computed - (low + high) / 2) / ((high - low) / 2);
            String expected = CheckNumbers.given(low) + " to " + CheckNumbers.withUnit(CheckNumbers.given(high), unit);
            String shown = CheckNumbers.withUnit(CheckNumbers.computed(computed), unit);
            check.finish(expected, shown, "", "limits", reason, share <= 1, share);
        }

        private void limit(String words, double limit, boolean met, double share, String reason) {
            String expected = words + CheckNumbers.withUnit(CheckNumbers.given(limit), unit);
            boolean rounding = met && limit > 0 && limit <= CheckNumbers.ROUNDING;
            String shown = rounding ? "met" : CheckNumbers.withUnit(CheckNumbers.computed(computed), unit);
            double severity = rounding || !Double.isFinite(share) ? 0 : Math.abs(share);
            check.finish(expected, shown, "", "limit", reason, met, severity);
        }
    }

    private void finish(
            String expected,
            String computed,
            String deviation,
            String tolerance,
            String reason,
            boolean met,
            double severity) {
        Status status = afterwards ? Status.HOLDS_SET_AFTERWARDS : Status.HOLDS;
        record(expected, computed, deviation, tolerance, reason, met ? status : Status.FAILS, severity);
        assertTrue(
                met,
                () -> quantity + " " + at + " (" + source + "): expected " + expected + ", computed " + computed
                        + ", tolerance " + tolerance + " (" + reason + ")");
    }

    private void record(
            String expected,
            String computed,
            String deviation,
            String tolerance,
            String reason,
            Status status,
            double severity) {
        CheckBook.add(new CheckRow(
                topic,
                quantity,
                source,
                testClass(),
                at,
                expected,
                computed,
                deviation,
                tolerance,
                reason,
                status,
                severity));
    }

    /** The outermost frame of the test sources outside this package names the test. */
    private static String testClass() {
        return StackWalker.getInstance(Option.RETAIN_CLASS_REFERENCE)
                .walk(frames -> frames.map(frame -> frame.getDeclaringClass().getName())
                        .filter(name -> name.matches("org\\.coldpleat\\.validation\\.[\\w.]+Test(\\$.*)?"))
                        .findFirst()
                        .orElse("none"))
                .replaceFirst("\\$.*", "")
                .replaceFirst("org\\.coldpleat\\.validation\\.", "");
    }
}
