package org.coldpleat.ui.report.section;

import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.StartBand;
import org.coldpleat.model.numerics.Quantiles;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.QuantityFormat;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.service.Sentences;
import org.jsoup.nodes.Element;

/** Numbers of the report: each with its band, or the words why it has none, and its origin. */
public final class Amounts {
    /** Class of a number with all that belongs to it. */
    public static final String AMOUNT = "amount";

    private static final String COMPUTED = "computed";

    private final UnitSystem units;

    public Amounts(UnitSystem units) {
        this.units = units;
    }

    /** A computed value with its 95 % band. */
    Element of(Band band, Kind kind) {
        return above(0, band, kind);
    }

    /** The sentence of a verdict in the units of the report. */
    String sentence(Verdict verdict) {
        return Sentences.of(verdict, units).strip();
    }

    /** The sentence of a notice in the units of the report, without its place. */
    String sentence(Notice notice) {
        return Sentences.of(notice, units);
    }

    /** The same for a value that cannot be below a least one [SI]. */
    Element above(double least, Band band, Kind kind) {
        if (!Double.isFinite(band.value())) {
            return words(ReportTexts.get("amount.noAnswer"), "", COMPUTED);
        }
        if (band.isWide() && Double.isFinite(band.highByFactor(least))) {
            return interval(band.value(), band.lowByFactor(least), band.highByFactor(least), kind);
        }
        double half = band.high() - band.value();
        if (!(half > 0) || !Double.isFinite(half)) {
            return words(QuantityFormat.format(band.value(), kind, units), ReportTexts.get("band.none"), COMPUTED);
        }
        return words(QuantityFormat.format(band.value(), half, kind, units), "", COMPUTED);
    }

    /** A share, whose band ends at nothing and at all. */
    Element share(Band share) {
        if (!Double.isFinite(share.value())) {
            return words(ReportTexts.get("amount.noAnswer"), "", COMPUTED);
        }
        double low = Math.max(0, share.low());
        double high = Math.min(1, share.high());
        return interval(share.value(), low, high, Kind.FRACTION);
    }

    /** A computed value between the ends of its 95 % band. */
    Element interval(double value, double low, double high, Kind kind) {
        if (!Double.isFinite(value)) {
            return words(ReportTexts.get("amount.noAnswer"), "", COMPUTED);
        }
        String shown = QuantityFormat.format(value, kind, units);
        boolean ends = Double.isFinite(low) && Double.isFinite(high);
        if (!ends) {
            return words(shown, ReportTexts.get("band.open"), COMPUTED);
        }
        String band = low == high
                ? ReportTexts.get("band.zero")
                : QuantityFormat.band(Math.min(low, high), Math.max(low, high), kind, units);
        return words(rounded(value, high - low, kind), band, COMPUTED);
    }

    Element of(StartBand band, Kind kind) {
        return interval(band.value(), band.low(), band.high(), kind);
    }

    /** Middle and band of a drawn answer. */
    Element of(Quantiles drawn, Kind kind) {
        return words(
                end(drawn.median(), kind),
                ReportTexts.get("band.drawn", end(drawn.low(), kind), end(drawn.high(), kind)),
                "drawn");
    }

    private String end(double value, Kind kind) {
        if (Double.isNaN(value)) {
            return ReportTexts.get("amount.noAnswer");
        }
        if (Double.isInfinite(value)) {
            return ReportTexts.get(value > 0 ? "amount.always" : "amount.never");
        }
        return rounded(value, 10, kind);
    }

    /** A value to the place of the second digit of its band, without the band. */
    private String rounded(double value, double width, Kind kind) {
        String both = QuantityFormat.format(value, Math.abs(width) / 2, kind, units);
        // one number needs no brackets, unless they hold its power of ten
        return both.replaceFirst("^\\(([^()]*) ± [0-9.]+\\) %", "$1 %").replaceFirst(" ± [0-9.]+", "");
    }

    /** A computed value for which no band was worked out. */
    Element unbanded(double value, Kind kind) {
        return Double.isFinite(value)
                ? words(QuantityFormat.format(value, kind, units), ReportTexts.get("band.none"), COMPUTED)
                : words(ReportTexts.get("amount.noAnswer"), "", COMPUTED);
    }

    /** A chance. */
    Element chance(double chance) {
        return words(QuantityFormat.format(chance, Kind.FRACTION, units), ReportTexts.get("band.chance"), COMPUTED);
    }

    /** A value that the case sets, such as the ends of a range. */
    Element set(double value, Kind kind) {
        return words(QuantityFormat.format(value, kind, units), ReportTexts.get("band.stated"), "stated");
    }

    /** What went in, with where it came from. */
    Element of(Measured measured) {
        String origin = measured.provenance().name();
        String band = isExact(measured) ? ReportTexts.get("band.exact") : "";
        Element amount = words(QuantityFormat.format(measured, units), band, origin);
        if (measured.provenance() == Provenance.MEASURED) {
            amount.selectFirst(".origin")
                    .appendText(ReportTexts.get("origin.readings", Integer.toString(measured.repeats())));
        }
        return amount;
    }

    private static boolean isExact(Measured measured) {
        return measured.spread() == Spread.NONE || measured.halfWidth() == 0;
    }

    /** A value of an estimate from tests. */
    Element estimate(Measured measured) {
        String band = isExact(measured) ? ReportTexts.get("band.none") : "";
        return words(QuantityFormat.format(measured, units), band, "estimated");
    }

    /** A number in words with its band in words. */
    Element words(String number, String band, String origin) {
        Element amount = Tags.of("span", AMOUNT);
        amount.appendChild(Tags.text("b", "", typographic(number)));
        if (!band.isEmpty()) {
            amount.appendText(" ").appendChild(Tags.text("span", "band", typographic(band)));
        }
        return amount.appendText(" ").appendChild(Tags.text("small", "origin", ReportTexts.get("origin." + origin)));
    }

    /** Powers with raised digits. */
    static String typographic(String text) {
        StringBuilder out = new StringBuilder();
        java.util.regex.Matcher power =
                java.util.regex.Pattern.compile("(?<=[0-9)])e(-?[0-9]+)").matcher(text);
        int at = 0;
        while (power.find()) {
            out.append(text, at, power.start()).append(" × 10").append(superscript(power.group(1)));
            at = power.end();
        }
        return out.append(text.substring(at)).toString().replaceAll("(?<![0-9A-Za-z)])-(?=[0-9])", "−");
    }

    private static String superscript(String digits) {
        StringBuilder raised = new StringBuilder();
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            raised.append(c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0'));
        }
        return raised.toString();
    }
}
