package org.coldpleat.shared.quantity;

import static org.coldpleat.shared.quantity.Coverage.COVERAGE_95;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/**
 * Reads quantities the way people write them: {@code 1.45 in}, {@code 36.8 mm ± 0.2 mm}, {@code 36.8 mm ± 1 %},
 * {@code 150 kPa x/÷ 1.9}, {@code 12 to 15 psi}, {@code 2-3/8"}, {@code [36.7, 36.9, 36.8] mm}, {@code 60,5 mm}, {@code 0.76 mm (typical)}.
 *
 * <p>A range and a ± give a rectangular spread, x/÷ a log-normal one whose 95 % band lies within that factor. No unit is ever guessed. Nothing here throws for bad text.
 */
public final class QuantityText {
    private static final Pattern MARK = Pattern.compile("\\s*\\(([A-Za-z]+)\\)$");
    private static final Pattern TIMES_TEN = Pattern.compile("(?<=\\d)\\s*[x×·*]\\s*10(?:\\^)?([+-]?\\d+)");
    private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+\\s*/?\\s*-");
    private static final Pattern RANGE =
            Pattern.compile("(?<![A-Za-z])to(?![A-Za-z])|\\.{2,}|\u2026|[\u2013\u2014]|-(?=\\s*[+-]?\\s*[\\d.,])");
    private static final Pattern FACTOR = Pattern.compile("[x×]\\s*/?\\s*÷|[x×]\\s*/(?=\\s*\\d)");
    private static final String PERCENT = "%";

    private QuantityText() {}

    /**
     * Reads one quantity.
     *
     * @param text as written by the user
     * @param kind what it has to measure
     * @param defaultProvenance where it comes from unless the text ends in a mark such as {@code (typical)}
     */
    public static QuantityReading parse(String text, Kind kind, Provenance defaultProvenance) {
        try {
            return QuantityReading.of(read(text, kind, defaultProvenance));
        } catch (Misread e) {
            return QuantityReading.of(e.problem());
        }
    }

    private static Measured read(String text, Kind kind, Provenance defaultProvenance) throws Misread {
        String body = tidy(text);
        Provenance provenance = defaultProvenance;
        Matcher mark = MARK.matcher(body);
        if (mark.find() && !isUnit(body.substring(unitStart(body)), kind)) {
            provenance = provenance(mark.group(1));
            body = body.substring(0, mark.start()).strip();
        }
        if (body.isEmpty()) {
            throw new Misread("quantity.empty", Units.words(kind));
        }
        Measured value = body.startsWith("[") ? readings(body, kind, provenance) : single(body, kind, provenance);
        boolean belowZero = value.value() < 0 || (value.spread() != Spread.NORMAL && value.low() < 0);
        if (kind == Kind.TEMPERATURE && belowZero) {
            throw new Misread("quantity.absoluteZero", text.strip());
        }
        return new Measured(
                kind, value.value(), value.halfWidth(), value.spread(), provenance, value.repeats(), text.strip());
    }

    private static Measured single(String body, Kind kind, Provenance provenance) throws Misread {
        NumberText first = NumberText.at(body, 0);
        Matcher plusMinus = PLUS_MINUS.matcher(body);
        if (plusMinus.find(first.end())) {
            String unit = body.substring(first.end(), plusMinus.start()).strip();
            NumberText half = NumberText.at(body, plusMinus.end());
            return plusMinus(
                    first.value(), unit, half, body.substring(half.end()).strip(), kind, provenance, body);
        }
        Matcher factor = FACTOR.matcher(body);
        if (factor.find(first.end())) {
            Unit unit = unit(body.substring(first.end(), factor.start()).strip(), kind, body);
            return within(unit.toSi(first.value()), NumberText.at(body, factor.end()), kind, provenance, body);
        }
        Matcher range = RANGE.matcher(body);
        if (range.find(first.end())) {
            NumberText second = NumberText.at(body, range.end());
            String lowUnit = body.substring(first.end(), range.start()).strip();
            String highUnit = body.substring(second.end()).strip();
            double low =
                    unit(lowUnit.isEmpty() ? highUnit : lowUnit, kind, body).toSi(first.value());
            double high =
                    unit(highUnit.isEmpty() ? lowUnit : highUnit, kind, body).toSi(second.value());
            if (low > high) {
                throw new Misread("quantity.reversed", body);
            }
            whole(kind, low, body);
            whole(kind, high, body);
            return low == high ? Measured.exact(kind, low, provenance) : Measured.between(kind, low, high, provenance);
        }
        double value = unit(body.substring(first.end()).strip(), kind, body).toSi(first.value());
        whole(kind, value, body);
        return Measured.exact(kind, value, provenance);
    }

    /** A value known within a factor either way, as a 95 % band. */
    private static Measured within(double value, NumberText factor, Kind kind, Provenance provenance, String body)
            throws Misread {
        boolean ends = body.substring(factor.end()).isBlank();
        if (!(value > 0) || !(factor.value() > 1) || !ends || kind == Kind.TEMPERATURE) {
            throw new Misread("quantity.factor", body);
        }
        whole(kind, value, body);
        return Measured.within(kind, value, factor.value(), provenance);
    }

    private static Measured plusMinus(
            double number,
            String valueUnit,
            NumberText half,
            String halfUnit,
            Kind kind,
            Provenance provenance,
            String body)
            throws Misread {
        if (half.value() < 0) {
            throw new Misread("quantity.spreadNegative", body);
        }
        boolean percent = halfUnit.equals(PERCENT);
        boolean points = percent && kind == Kind.FRACTION;
        if (points && valueUnit.isEmpty() && Math.abs(number) <= 1) {
            throw new Misread("quantity.spreadAmbiguous", body);
        }
        boolean shared = valueUnit.isEmpty() && !Units.mayStandBare(kind) && !percent;
        Unit unit = unit(shared || (points && valueUnit.isEmpty()) ? halfUnit : valueUnit, kind, body);
        double value = unit.toSi(number);
        double halfWidth;
        if (percent && !points) {
            if (kind == Kind.TEMPERATURE) {
                throw new Misread("quantity.spreadPercentOfTemperature", body);
            }
            halfWidth = Math.abs(value) * half.value() / 100;
        } else if (halfUnit.isEmpty()) {
            halfWidth = unit.differenceToSi(half.value());
        } else {
            Kind difference = kind == Kind.TEMPERATURE ? Kind.TEMPERATURE_DIFFERENCE : kind;
            halfWidth = unit(halfUnit, difference, body).differenceToSi(half.value());
        }
        whole(kind, value, body);
        Spread spread = halfWidth == 0 ? Spread.NONE : Spread.RECTANGULAR;
        return Measured.exact(kind, value, provenance).withSpread(halfWidth, spread);
    }

    /**
     * Mean of readings, with a normal spread whose 95 % band is the t interval of the mean: half-width = t s/(1.96
     * sqrt(n)).
     */
    @Source("JCGM 100:2008 (GUM), 4.2.3 for the mean and G.3 with table G.2 for the t interval")
    private static Measured readings(String body, Kind kind, Provenance provenance) throws Misread {
        int close = body.indexOf(']');
        if (close < 0) {
            throw new Misread("quantity.listOpen", body);
        }
        String shared = body.substring(close + 1).strip();
        List<Double> values = new ArrayList<>();
        for (String item : items(body.substring(1, close), body)) {
            NumberText number = NumberText.at(item, 0);
            String own = item.substring(number.end()).strip();
            double value = unit(own.isEmpty() ? shared : own, kind, body).toSi(number.value());
            whole(kind, value, body);
            values.add(value);
        }
        int n = values.size();
        double mean = values.stream().mapToDouble(Double::doubleValue).sum() / n;
        if (n == 1) {
            return Measured.exact(kind, mean, provenance);
        }
        double squares =
                values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        double halfWidth = StudentT.twoSided(0.95, n - 1) * Math.sqrt(squares / (n - 1) / n) / COVERAGE_95;
        return new Measured(kind, mean, halfWidth, Spread.NORMAL, provenance, n, "");
    }

    private static List<String> items(String inside, String body) throws Misread {
        String[] items;
        if (inside.contains(";")) {
            items = inside.split(";", -1);
        } else if (inside.contains(", ")) {
            items = inside.split(",\\s+", -1);
        } else {
            items = inside.split(",", -1);
            boolean whole = true;
            boolean bare = false;
            for (String item : items) {
                whole &= item.strip().matches("\\d+(?![.\\d]).*");
                bare |= item.strip().matches("\\d+");
            }
            if (items.length > 1 && whole && bare) {
                throw new Misread("quantity.listComma", body);
            }
        }
        List<String> out = new ArrayList<>();
        for (String item : items) {
            if (item.isBlank()) {
                throw new Misread("quantity.listGap", body);
            }
            out.add(item.strip());
        }
        return out;
    }

    private static void whole(Kind kind, double value, String body) throws Misread {
        if (kind == Kind.COUNT && value != Math.rint(value)) {
            throw new Misread("quantity.whole", body);
        }
    }

    private static Unit unit(String text, Kind kind, String body) throws Misread {
        Optional<Unit> known = Units.find(kind, text);
        if (known.isPresent()) {
            return known.get();
        }
        String allowed = String.join(", ", Units.symbols(kind));
        if (text.isEmpty()) {
            throw new Misread("quantity.unitMissing", body, Units.words(kind), allowed);
        }
        Optional<Kind> other = Units.kindOf(text);
        if (other.isPresent() && Units.mayStandBare(kind)) {
            throw new Misread("quantity.unitUnwanted", body, text, Units.words(other.get()), Units.words(kind));
        }
        if (other.isPresent()) {
            throw new Misread("quantity.unitOfOtherKind", text, Units.words(other.get()), Units.words(kind), allowed);
        }
        if (Character.isDigit(text.charAt(0)) || text.charAt(0) == ',' || text.charAt(0) == '.') {
            throw new Misread("quantity.number", body);
        }
        for (int space = text.lastIndexOf(' '); space > 0; space = text.lastIndexOf(' ', space - 1)) {
            if (Units.find(kind, text.substring(0, space)).isPresent()) {
                throw new Misread("quantity.trailing", text.substring(space).strip(), body);
            }
        }
        List<String> names = new ArrayList<>();
        for (Unit unit : Units.of(kind)) {
            names.add(unit.symbol());
            names.addAll(unit.aliases());
        }
        Optional<String> near = NearestWord.to(text, names);
        if (near.isPresent()) {
            throw new Misread("quantity.unitUnknown.near", text, Units.words(kind), allowed, near.get());
        }
        throw new Misread("quantity.unitUnknown", text, Units.words(kind), allowed.isEmpty() ? "1" : allowed);
    }

    private static Provenance provenance(String word) throws Misread {
        List<String> known = new ArrayList<>();
        for (Provenance provenance : Provenance.values()) {
            known.add(provenance.name().toLowerCase(Locale.ROOT));
            if (provenance.name().equalsIgnoreCase(word)) {
                return provenance;
            }
        }
        throw new Misread("quantity.mark", word, String.join(", ", known));
    }

    private static boolean isUnit(String text, Kind kind) {
        return !text.isBlank() && Units.find(kind, text).isPresent();
    }

    private static int unitStart(String body) {
        int i = body.length();
        while (i > 0 && !Character.isDigit(body.charAt(i - 1))) {
            i--;
        }
        return i;
    }

    /** True behind a 10 that has something before it, and behind a digit that is raised already. */
    private static boolean isBehindTen(StringBuilder out) {
        int last = out.length() - 1;
        if (last < 2) {
            return false;
        }
        char digit = out.charAt(last);
        char before = out.charAt(last - 1);
        return (before == '1' && digit == '0') || (before == '^' && digit >= '0' && digit <= '9');
    }

    /** Brings spaces, minus signs, raised digits after a ten and the one-character fractions into plain form. */
    private static String tidy(String text) {
        StringBuilder out = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int fraction = "½¼¾⅛⅜⅝⅞".indexOf(c);
            if (fraction >= 0) {
                boolean mixed = out.length() > 0 && Character.isDigit(out.charAt(out.length() - 1));
                out.append(mixed ? " " : "").append("1/21/43/41/83/85/87/8", 3 * fraction, 3 * fraction + 3);
                continue;
            }
            int raised = "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c);
            if (raised >= 0 && isBehindTen(out)) {
                out.append(out.charAt(out.length() - 2) == '^' ? "" : "^").append(raised);
                continue;
            }
            switch (c) {
                case '\u2212', '\u2010', '\u2011' -> out.append('-');
                case '\u00a0', '\u2009', '\u202f', '\t', '\n' -> out.append(' ');
                case '\u2044' -> out.append('/');
                default -> out.append(c);
            }
        }
        return TIMES_TEN.matcher(out.toString().strip()).replaceAll("e$1");
    }
}
