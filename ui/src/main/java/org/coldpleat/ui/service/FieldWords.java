package org.coldpleat.ui.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;

/** Field paths of a case as words for a reader. */
public final class FieldWords {
    private static final String CANDIDATES = "candidates";
    private static final Pattern STEP = Pattern.compile("([^.\\[]+)(?:\\[(\\d+)])?\\.?");

    /** Links of an explanation whose subject is a path or a key. */
    private static final Set<String> NAMED_BY_PATH = Set.of("input", "assumed", "ingredient", "contribution");

    private FieldWords() {}

    /**
     * A path in the words of the sheets, list entries counted from 1: {@code basePlate.inletHoles.count} is "Base plate,
     * inlet holes, number". Which candidate it belongs to is left out.
     */
    public static String of(String path) {
        List<String> words = new ArrayList<>();
        StringBuilder way = new StringBuilder();
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            String key = step.group(1);
            way.append(way.isEmpty() ? "" : ".").append(key);
            if (way.toString().equals(CANDIDATES)) {
                continue;
            }
            String word = FieldCatalog.label(way.toString()).orElseGet(() -> spaced(key));
            words.add(step.group(2) == null ? word : word + " " + (Integer.parseInt(step.group(2)) + 1));
        }
        String all = String.join(", ", words).toLowerCase(Locale.ROOT);
        return all.isEmpty() ? path : all.substring(0, 1).toUpperCase(Locale.ROOT) + all.substring(1);
    }

    /** What a link of an explanation belongs to; empty if that is clear from the chain. */
    public static String subject(Explanation link) {
        return NAMED_BY_PATH.contains(link.key()) ? of(link.subject()) : link.subject();
    }

    private static String spaced(String key) {
        return key.replaceAll("([a-z])([A-Z])", "$1 $2");
    }
}
