package org.coldpleat.shared.casefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.coldpleat.shared.quantity.Measured;

/**
 * A case file that was understood.
 *
 * @param file name of the file as given
 * @param digest SHA-256 of the text in UTF-8, as lower-case hexadecimal digits
 * @param root the top of the file
 */
public record CaseDocument(String file, String digest, Section root) {
    public CaseDocument {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(digest, "digest");
        Objects.requireNonNull(root, "root");
    }

    /** Every quantity by its full path, in the order of the file. */
    public Map<String, Measured> quantities() {
        Map<String, Measured> all = new LinkedHashMap<>();
        collect(root, all);
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
}
