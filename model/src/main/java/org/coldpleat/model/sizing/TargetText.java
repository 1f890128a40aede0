package org.coldpleat.model.sizing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.NearestWord;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.source.Provenance;

/**
 * Reads a target written in words.
 *
 * <pre>
 * never open at TEMPERATURE in STATE
 * opens below TEMPERATURE in STATE
 * share below PERCENT at TEMPERATURE in STATE
 * element below PRESSURE at TEMPERATURE in STATE
 * </pre>
 *
 * {@code in STATE} may be left out where the case has one state. Upper and lower case are the same.
 */
public final class TargetText {
    private static final int PATTERN = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
    private static final Pattern NEVER = Pattern.compile("never\\s+opens?\\s+(?:at|below)\\s+(.+)", PATTERN);
    private static final Pattern OPENS = Pattern.compile("opens?\\s+(?:only\\s+)?(?:below|at)\\s+(.+)", PATTERN);
    private static final Pattern LIMIT = Pattern.compile("(share|element)\\s+below\\s+(.+?)\\s+at\\s+(.+)", PATTERN);
    private static final Pattern STATE = Pattern.compile("(.+?)\\s+in\\s+[\"']?(.+?)[\"']?\\s*", PATTERN);

    private TargetText() {}

    /**
     * A target, or the finding that says what is wrong with it.
     *
     * @param target the target, if the text was understood
     * @param problem what was not understood, otherwise
     */
    public record Reading(Optional<Target> target, Optional<Notice> problem) {
        static Reading of(Target target) {
            return new Reading(Optional.of(target), Optional.empty());
        }

        static Reading failed(String code, String... words) {
            return failed(code, Shown.words(List.of(words)).toArray(Shown[]::new));
        }

        private static Reading failed(String code, Shown... values) {
            return new Reading(Optional.empty(), Optional.of(Notice.of(code, Severity.WARNING, "", values)));
        }
    }

    /**
     * Reads a target.
     *
     * @param text as written
     * @param states names of the states of the case, at least one
     * @param from coldest oil temperature of the case [K]
     * @param to warmest oil temperature of the case [K]
     */
    public static Reading read(String text, List<String> states, double from, double to) {
        String words = text.strip().replaceAll("\\s+", " ");
        Matcher never = NEVER.matcher(words);
        if (never.matches()) {
            return place(Target.Kind.NEVER_OPEN, Double.NaN, never.group(1), states, from, to);
        }
        Matcher opens = OPENS.matcher(words);
        if (opens.matches()) {
            return place(Target.Kind.OPENS_BELOW, Double.NaN, opens.group(1), states, from, to);
        }
        Matcher limit = LIMIT.matcher(words);
        if (limit.matches()) {
            boolean share = limit.group(1).toLowerCase(Locale.ROOT).equals("share");
            Kind kind = share ? Kind.FRACTION : Kind.PRESSURE_DIFFERENCE;
            Optional<Double> value = value(limit.group(2), kind);
            if (value.isEmpty() || !(value.get() > 0) || (share && value.get() >= 1)) {
                return Reading.failed(share ? "target.share" : "target.pressure", limit.group(2));
            }
            return place(
                    share ? Target.Kind.SHARE_BELOW : Target.Kind.ELEMENT_BELOW,
                    value.get(),
                    limit.group(3),
                    states,
                    from,
                    to);
        }
        return Reading.failed("target.form", words);
    }

    private static Reading place(
            Target.Kind kind, double limit, String rest, List<String> states, double from, double to) {
        Matcher named = STATE.matcher(rest);
        String written = rest;
        String state = states.get(0);
        if (named.matches()) {
            written = named.group(1);
            String wanted = named.group(2);
            Optional<String> known =
                    states.stream().filter(one -> one.equalsIgnoreCase(wanted)).findFirst();
            if (known.isEmpty()) {
                return unknownState(wanted, states);
            }
            state = known.get();
        } else if (states.size() > 1) {
            return Reading.failed("target.noState", String.join(", ", states));
        }
        Optional<Double> temperature = value(written, Kind.TEMPERATURE);
        if (temperature.isEmpty()) {
            return Reading.failed("target.temperature", written);
        }
        double kelvin = temperature.get();
        if (kelvin < from || kelvin >= to) {
            return Reading.failed("target.outside", Shown.word(written), degrees(from), degrees(to));
        }
        return Reading.of(new Target(kind, kelvin, state, limit));
    }

    private static Reading unknownState(String wanted, List<String> states) {
        return NearestWord.to(wanted, states)
                .map(near -> Reading.failed("target.nearState", wanted, near))
                .orElseGet(() -> Reading.failed("target.state", wanted, String.join(", ", states)));
    }

    private static Optional<Double> value(String written, Kind kind) {
        return QuantityText.parse(written, kind, Provenance.MEASURED).value().map(Measured::value);
    }

    private static Shown degrees(double kelvin) {
        return new Amount(Look.PLAIN_TEMPERATURE, kelvin);
    }
}
