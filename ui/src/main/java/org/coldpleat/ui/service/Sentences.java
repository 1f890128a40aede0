package org.coldpleat.ui.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import org.coldpleat.model.run.Verdict;
import org.coldpleat.shared.notice.Notice;

/** The words of verdicts, assumptions, explanations and notices, from the bundles beside the code that reports them. */
public final class Sentences {
    private static final String VERDICTS = "org.coldpleat.model.run.verdicts";
    private static final String EXPLANATIONS = "org.coldpleat.model.explain.explanations";
    private static final String NOTICES = "org.coldpleat.shared.notice.notices";

    private Sentences() {}

    /** The sentence of a verdict: candidates first, then its values, then the state. */
    public static String of(Verdict verdict) {
        List<String> values = new ArrayList<>(verdict.candidates());
        values.addAll(verdict.values());
        values.add(verdict.state());
        return fill(text(VERDICTS, verdict.code()).orElse(verdict.code()), values);
    }

    /** The sentence of a notice, without its place. */
    public static String of(Notice notice) {
        return fill(text(NOTICES, notice.code()).orElse(notice.code()), notice.values());
    }

    /** Why an assumption was made. */
    public static String assumption(String code) {
        return text(VERDICTS, code).orElse(code);
    }

    /** Name of a kind of evidence for the medium resistance. */
    public static String evidence(String kind) {
        return text(VERDICTS, "evidence." + kind).orElse(kind);
    }

    /** Title, equation or source of a link of an explanation; empty if it has none. */
    public static Optional<String> explanation(String key, String part) {
        return text(EXPLANATIONS, key + "." + part);
    }

    private static Optional<String> text(String bundle, String key) {
        try {
            ResourceBundle texts = ResourceBundle.getBundle(bundle, Locale.ROOT);
            return texts.containsKey(key) ? Optional.of(texts.getString(key)) : Optional.empty();
        } catch (MissingResourceException e) {
            return Optional.empty();
        }
    }

    private static String fill(String pattern, List<String> values) {
        String filled = pattern;
        for (int i = 0; i < values.size(); i++) {
            filled = filled.replace("{" + i + "}", values.get(i));
        }
        return filled;
    }
}
