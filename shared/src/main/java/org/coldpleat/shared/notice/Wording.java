package org.coldpleat.shared.notice;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.UnitSystem;

/** The texts of one bundle, filled with values that are already formatted. */
public final class Wording {
    private static final Pattern WRITTEN = Pattern.compile("\\[(-?[0-9.]+) ([^\\]]+)]");

    private final ResourceBundle bundle;

    private Wording(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The bundle with a base name that lies beside a class. */
    public static Wording beside(Class<?> owner, String baseName) {
        return new Wording(bundle(owner, baseName));
    }

    /** The texts of a file beside a class. There is one language: nothing has to be looked for. */
    public static ResourceBundle bundle(Class<?> owner, String baseName) {
        String file = baseName + ".properties";
        try (InputStream in = owner.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("resource " + file + " is missing beside " + owner);
            }
            return new PropertyResourceBundle(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** True if there is a text for the code. */
    public boolean has(String code) {
        return bundle.containsKey(code);
    }

    /** All codes with a text. */
    public Set<String> codes() {
        return new TreeSet<>(bundle.keySet());
    }

    /** The pattern of a code as written in the bundle. */
    public String pattern(String code) {
        return bundle.getString(code);
    }

    /** The text of a code with its values filled in; the bare code with its values if there is no text for it. */
    public String text(String code, List<String> values) {
        Objects.requireNonNull(code, "code");
        if (!has(code)) {
            return values.isEmpty() ? code : code + " " + values;
        }
        return new MessageFormat(pattern(code), Locale.ROOT).format(values.toArray());
    }

    /**
     * The text of a code with its values in the units of a system. An amount that is part of the text stands in square
     * brackets in the bundle, such as {@code [0.2 mm]}.
     */
    public String text(String code, List<? extends Shown> values, UnitSystem units) {
        List<String> texts = Shown.texts(values, units);
        if (!has(code)) {
            return text(code, texts);
        }
        String pattern = WRITTEN.matcher(pattern(code))
                .replaceAll(found -> Matcher.quoteReplacement(Look.written(found.group(1), found.group(2), units)));
        return new MessageFormat(pattern, Locale.ROOT).format(texts.toArray());
    }

    /** The text of a code, which must be there, with values in its numbered places; quotes stand for themselves. */
    public String filled(String code, String... values) {
        return fill(pattern(code), List.of(values));
    }

    /** The text of a code made of data; a code without text stands for itself. */
    public String patternOr(String code, String otherwise) {
        return has(code) ? pattern(code) : otherwise;
    }

    /** Puts values into the numbered places of a text, one pass, so that a value may hold braces itself. */
    public static String fill(String pattern, List<String> values) {
        StringBuilder filled = new StringBuilder();
        int at = 0;
        while (at < pattern.length()) {
            int open = pattern.indexOf('{', at);
            int close = open < 0 ? -1 : pattern.indexOf('}', open);
            if (close < 0) {
                break;
            }
            String inside = pattern.substring(open + 1, close);
            filled.append(pattern, at, open);
            if (inside.matches("\\d{1,2}") && Integer.parseInt(inside) < values.size()) {
                filled.append(values.get(Integer.parseInt(inside)));
            } else {
                filled.append(pattern, open, close + 1);
            }
            at = close + 1;
        }
        return filled.append(pattern.substring(at)).toString();
    }
}
