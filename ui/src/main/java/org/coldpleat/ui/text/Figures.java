package org.coldpleat.ui.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.shared.source.Source;

/** Numbers for people: no more digits than the spread allows, the same everywhere. */
public final class Figures {
    /** Shown when there is no number. */
    public static final String NOTHING = "-";

    private static final int DIGITS_WITHOUT_SPREAD = 4;
    private static final int DIGITS_BESIDE = 3;
    private static final int LOWEST_PLAIN_EXPONENT = -4;
    private static final int HIGHEST_PLAIN_EXPONENT = 6;

    private Figures() {}

    /** A value with four significant digits, trailing zeros kept off. */
    public static String plain(double value) {
        return significant(value, DIGITS_WITHOUT_SPREAD);
    }

    /** A value with three significant digits, for the unit in brackets. */
    public static String plain3(double value) {
        return significant(value, DIGITS_BESIDE);
    }

    private static String significant(double value, int digits) {
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        if (rounded.signum() == 0) {
            return "0";
        }
        int exponent = rounded.precision() - rounded.scale() - 1;
        if (exponent < LOWEST_PLAIN_EXPONENT || exponent > HIGHEST_PLAIN_EXPONENT) {
            return scientific(rounded);
        }
        return rounded.stripTrailingZeros().toPlainString();
    }

    /** A value with a fixed number of decimals. */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        String text =
                new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** Half the 95 % band of a result, in the unit. */
    static double halfBand(Band band, ShownUnit unit) {
        return Math.abs(unit.ofDifference(band.high() - band.low())) / 2;
    }

    /** A value and its 95 % band with the same number of decimals, such as {@code 12.3 ± 1.4}; without unit. */
    public static String banded(Band band, ShownUnit unit) {
        double value = unit.of(band.value());
        double half = halfBand(band, unit);
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        if (!(half > 0) || !Double.isFinite(half)) {
            return plain(value);
        }
        int decimals = decimals(half);
        if (decimals > -LOWEST_PLAIN_EXPONENT) {
            return plain(value) + " ± " + plain(half);
        }
        return rounded(value, decimals) + " ± " + rounded(half, decimals);
    }

    /** A value that cannot be negative with its 95 % band, such as {@code 12.3 ± 1.4}, or {@code 1.1 (0.4 to 3.1)} if wide. */
    static String positive(Band band, ShownUnit unit) {
        return above(0, band, unit);
    }

    /** The same for a value that cannot be below a least one [SI]. */
    static String above(double least, Band band, ShownUnit unit) {
        return band.isWide() && Double.isFinite(band.highByFactor(least))
                ? Texts.get(
                        "share.range",
                        plain3(unit.of(band.value())),
                        plain3(unit.of(band.lowByFactor(least))),
                        plain3(unit.of(band.highByFactor(least))))
                : banded(band, unit);
    }

    /** Decimals that leave two significant digits of a spread; negative left of the point. */
    @Source("JCGM 100:2008 (GUM), 7.2.6: at most two significant digits")
    public static int decimals(double spread) {
        return 1 - (int) Math.floor(Math.log10(spread));
    }

    /** A value rounded to decimals that may be negative. */
    public static String rounded(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return NOTHING;
        }
        BigDecimal scaled = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return scaled.signum() == 0 ? "0" : scaled.toPlainString();
    }

    /** A share as percent: whole numbers above 10, one decimal below, none at zero. */
    public static String percent(double share) {
        double percent = 100 * share;
        if (!Double.isFinite(percent)) {
            return NOTHING;
        }
        if (percent == 0) {
            return "0";
        }
        if (percent < 0.05) {
            return "<0.1";
        }
        return fixed(percent, percent < 9.95 ? 1 : 0);
    }

    private static String scientific(BigDecimal value) {
        return String.format(Locale.ROOT, "%." + (DIGITS_WITHOUT_SPREAD - 1) + "e", value)
                .replaceFirst("e([+-])0?(\\d+)$", "e$1$2")
                .replace("e+", "e");
    }
}
