package org.coldpleat.ui.commandline.casefile;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.QuantityText;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.commandline.output.ExitCode;
import org.coldpleat.ui.commandline.output.Stop;
import org.coldpleat.ui.text.Texts;

/**
 * A filter in a few words with semicolons between them: its name first, then what is known, told apart by its unit. Of two
 * lengths the first is the depth of the pleats, the second their height.
 */
final class FilterWords {
    private static final Pattern COUNT = Pattern.compile("(\\d+)(?:\\s+pleats?)?");

    private static final String DEPTH = "pleats.depth";
    private static final String HEIGHT = "pleats.height";

    private FilterWords() {}

    /**
     * A draft with the filter in it.
     *
     * @param number place of the filter among the candidates, from 0
     */
    static CaseDraft into(CaseDraft draft, int number, String words) {
        String filter = "candidates[" + number + "].";
        String[] parts = words.split(";", -1);
        CaseDraft filled = parts[0].isBlank() ? draft : draft.set(filter + "name", parts[0].strip());
        for (int i = 1; i < parts.length; i++) {
            String part = parts[i].strip();
            if (part.isEmpty()) {
                continue;
            }
            CaseDraft now = filled;
            String path = field(part, now.value(filter + DEPTH).isPresent())
                    .filter(key -> now.value(filter + key).isEmpty())
                    .orElseThrow(() -> new Stop(ExitCode.BAD_INPUT, Texts.get("new.filterPart", words, part)));
            Matcher count = COUNT.matcher(part);
            filled = filled.set(filter + path, count.matches() ? count.group(1) : part);
        }
        return filled;
    }

    private static Optional<String> field(String part, boolean depthTold) {
        if (COUNT.matcher(part).matches()) {
            return Optional.of("pleats.count");
        }
        for (List<String> choice : List.of(List.of("medium", "family"), List.of("bypass", "position"))) {
            Field field = FieldCatalog.candidate().field(choice.get(0)).field(choice.get(1));
            if (field.choices().contains(part)) {
                return Optional.of(String.join(".", choice));
            }
        }
        if (is(part, Kind.PRESSURE_DIFFERENCE)) {
            return Optional.of("bypass.openingPressure");
        }
        if (is(part, Kind.AREA)) {
            return Optional.of("medium.statedArea");
        }
        return is(part, Kind.LENGTH) ? Optional.of(depthTold ? HEIGHT : DEPTH) : Optional.empty();
    }

    private static boolean is(String part, Kind kind) {
        return QuantityText.parse(part, kind, Provenance.MEASURED).value().isPresent();
    }
}
