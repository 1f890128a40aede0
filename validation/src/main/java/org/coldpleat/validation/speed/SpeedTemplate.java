package org.coldpleat.validation.speed;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The page with places for what is measured. A place in double braces is a form and a product of factors:
 * {@code time F}, {@code ratio F}, {@code bytes F}, {@code atMost 1.5 µs: F}, {@code atLeast 30: F}; or
 * {@code machine}, {@code settings}. Factors are held apart by {@code " * "} and {@code " / "}; each is a number, the name of
 * a benchmark with its compilers, such as {@code PackSolveBenchmark.radialPack@C1}, or a command line that starts with
 * {@code ./coldpleat}. So the page alone says what has to be measured.
 */
final class SpeedTemplate {
    private static final Pattern PLACE = Pattern.compile("\\{\\{(\\w+) ?([^{}]*)}}");
    private static final Pattern FACTOR = Pattern.compile("(^| [*/] )(.+?)(?= [*/] |$)");
    private static final Pattern NUMBER = Pattern.compile("[0-9.]+");

    private final String text;

    SpeedTemplate(String text) {
        this.text = text;
    }

    /** The template of the page {@code docs/speed.md}. */
    static SpeedTemplate ofPage() throws IOException {
        try (InputStream in = SpeedTemplate.class.getResourceAsStream("speed.md")) {
            return new SpeedTemplate(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    /** Names of all that has to be measured. */
    Set<String> names() {
        Set<String> names = new TreeSet<>();
        Matcher place = PLACE.matcher(text);
        while (place.find()) {
            Matcher factor = FACTOR.matcher(formula(place.group(2)));
            while (factor.find()) {
                if (!NUMBER.matcher(factor.group(2)).matches()) {
                    names.add(factor.group(2));
                }
            }
        }
        return names;
    }

    /**
     * The page.
     *
     * @param figures by name
     * @param machine what it was measured on
     * @param settings how long it was measured
     */
    String filled(Map<String, Figure> figures, String machine, String settings) {
        return replaced(place -> {
            String rest = place.group(2);
            return switch (place.group(1)) {
                case "machine" -> machine;
                case "settings" -> settings;
                case "time" -> FigureText.time(value(rest, figures, Figure::seconds));
                case "ratio" -> FigureText.ratio(value(rest, figures, Figure::seconds));
                case "bytes" -> FigureText.bytes(value(rest, figures, Figure::bytes));
                case "atMost" ->
                    verdict(rest, value(rest, figures, Figure::seconds) <= FigureText.seconds(limit(rest)));
                case "atLeast" ->
                    verdict(rest, value(rest, figures, Figure::seconds) >= Double.parseDouble(limit(rest)));
                default -> throw new IllegalArgumentException("no form: " + place.group());
            };
        });
    }

    /** What a filled page looks like, a pattern for each line: its words, and in its places any number of the right form. */
    Pattern[] shape() {
        return text.lines()
                .map(line -> {
                    StringBuilder shape = new StringBuilder();
                    Matcher place = PLACE.matcher(line);
                    int end = 0;
                    while (place.find()) {
                        shape.append(Pattern.quote(line.substring(end, place.start())));
                        shape.append(shape(place));
                        end = place.end();
                    }
                    return Pattern.compile(shape + Pattern.quote(line.substring(end)));
                })
                .toArray(Pattern[]::new);
    }

    private static String shape(Matcher place) {
        return switch (place.group(1)) {
            case "time" -> "[0-9.]+ (ns|µs|ms|s)";
            case "ratio" -> "[0-9.]+";
            case "bytes" -> "(none|[0-9.]+ [kMG]?B)";
            case "atMost", "atLeast" -> Pattern.quote(limit(place.group(2))) + ", (met|missed)";
            default -> ".+";
        };
    }

    private String replaced(Function<Matcher, String> with) {
        StringBuilder page = new StringBuilder();
        Matcher place = PLACE.matcher(text);
        while (place.find()) {
            place.appendReplacement(page, Matcher.quoteReplacement(with.apply(place)));
        }
        return place.appendTail(page).toString();
    }

    private static String verdict(String rest, boolean met) {
        return limit(rest) + (met ? ", met" : ", missed");
    }

    private static String limit(String rest) {
        return rest.substring(0, rest.indexOf(':'));
    }

    private static String formula(String rest) {
        return rest.substring(rest.indexOf(':') + 1).strip();
    }

    private static double value(String rest, Map<String, Figure> figures, ToDoubleFunction<Figure> of) {
        double product = 1;
        Matcher factor = FACTOR.matcher(formula(rest));
        while (factor.find()) {
            String name = factor.group(2);
            double value;
            if (NUMBER.matcher(name).matches()) {
                value = Double.parseDouble(name);
            } else if (figures.containsKey(name)) {
                value = of.applyAsDouble(figures.get(name));
            } else {
                throw new IllegalArgumentException("not measured: " + name);
            }
            product = factor.group(1).contains("/") ? product / value : product * value;
        }
        return product;
    }
}
