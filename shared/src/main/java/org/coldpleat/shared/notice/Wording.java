package org.coldpleat.shared.notice;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;

/** The texts of one bundle, filled with values that are already formatted. */
public final class Wording {
    private final ResourceBundle bundle;

    private Wording(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The bundle with a base name that lies beside a class. */
    public static Wording beside(Class<?> owner, String baseName) {
        String name = owner.getPackageName() + "." + baseName;
        return new Wording(ResourceBundle.getBundle(name, Locale.ROOT, owner.getClassLoader()));
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
}
