package org.coldpleat.ui.commandline.coldstart;

import java.util.Locale;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.Texts;

/** Times and volumes of a start for people. */
final class StartTimes {
    private static final double TENTHS_BELOW = 9.95;
    private static final int MINUTE = 60;
    private static final int HOUR = 3600;

    private StartTimes() {}

    /** Minutes and seconds such as {@code 2:05}, below ten seconds with a tenth; hours in front where there are any. */
    static String clock(double seconds) {
        if (!Double.isFinite(seconds)) {
            return Figures.NOTHING;
        }
        if (seconds == 0) {
            return "0";
        }
        if (seconds < TENTHS_BELOW) {
            return String.format(Locale.ROOT, "0:%04.1f", seconds);
        }
        long whole = Math.round(seconds);
        return whole < HOUR
                ? String.format(Locale.ROOT, "%d:%02d", whole / MINUTE, whole % MINUTE)
                : String.format(Locale.ROOT, "%d:%02d:%02d", whole / HOUR, whole % HOUR / MINUTE, whole % MINUTE);
    }

    /** A time with its band; without one where nothing moves it. */
    static String clock(StartBand band) {
        String best = Double.isInfinite(band.value()) ? Texts.get("coldstart.notWithin") : clock(band.value());
        if (Double.isNaN(band.value()) || clock(band.low()).equals(clock(band.high()))) {
            return best;
        }
        return Double.isInfinite(band.high())
                ? Texts.get("coldstart.bandOpen", best, clock(band.low()))
                : Texts.get("coldstart.band", best, clock(band.low()), clock(band.high()));
    }

    /** A value in a unit with its band, to the digits that the band allows, three at most. */
    static String banded(StartBand band, ShownUnit unit) {
        double half = unit.ofDifference(band.halfWidth());
        String best = Figures.plain3(unit.of(band.value()));
        if (!(half > 0) || Figures.plain3(unit.of(band.low())).equals(Figures.plain3(unit.of(band.high())))) {
            return best;
        }
        int decimals = Math.min(Figures.decimals(half), Figures.decimals(unit.of(band.high())) + 1);
        return Texts.get(
                "coldstart.band",
                Figures.rounded(unit.of(band.value()), decimals),
                Figures.rounded(unit.of(band.low()), decimals),
                Figures.rounded(unit.of(band.high()), decimals));
    }
}
