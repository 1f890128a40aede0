package org.coldpleat.shared.casefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.coldpleat.shared.quantity.Measured;

/**
 * A case file that was understood.
 *
 * @param file name of the file as given
 * @param digest SHA-256 of the text in UTF-8 and of the readings of a temperature log in a file of its own, as lower-case
 *     hexadecimal digits
 * @param root the top of the file
 * @param startTrace logged oil temperatures of a start, from the case itself or the file it names; empty without a log
 */
public record CaseDocument(String file, String digest, Section root, List<LoggedTemperature> startTrace) {
    private static final String UNNAMED = "case";

    public CaseDocument {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(digest, "digest");
        Objects.requireNonNull(root, "root");
        startTrace = List.copyOf(startTrace);
    }

    /** Title of the case: as written, else the name of its file without folder and extension; a plain word without a file. */
    public String title() {
        return root.text("title").orElseGet(() -> {
            String name = file.substring(1 + Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')));
            int point = name.lastIndexOf('.');
            String bare = point > 0 ? name.substring(0, point) : name;
            return bare.isBlank() ? UNNAMED : bare;
        });
    }

    /** The same file, understood in more detail. */
    public CaseDocument withRoot(Section other) {
        return new CaseDocument(file, digest, other, startTrace);
    }

    /** Every quantity by its full path, in the order of the file. */
    public Map<String, Measured> quantities() {
        Map<String, Measured> all = new LinkedHashMap<>();
        collect(root, all);
        return Collections.unmodifiableMap(all);
    }

    /** Every text, choice and yes or no by its full path, and every remark to a quantity, in the order of the file. */
    public Map<String, String> words() {
        Map<String, String> all = new LinkedHashMap<>();
        collectWords(root, all);
        return Collections.unmodifiableMap(all);
    }

    private static void collect(Section section, Map<String, Measured> all) {
        for (String key : section.keys()) {
            Entry entry = section.entry(key);
            entry.quantity().ifPresent(measured -> all.put(section.pathOf(key), measured));
            entry.section().ifPresent(below -> collect(below, all));
            entry.sections().forEach(below -> collect(below, all));
        }
    }

    private static void collectWords(Section section, Map<String, String> all) {
        for (String key : section.keys()) {
            Entry entry = section.entry(key);
            entry.text()
                    .or(() -> entry.flag().map(String::valueOf))
                    .or(entry::note)
                    .ifPresent(words -> all.put(section.pathOf(key), words));
            entry.section().ifPresent(below -> collectWords(below, all));
            entry.sections().forEach(below -> collectWords(below, all));
        }
    }
}
