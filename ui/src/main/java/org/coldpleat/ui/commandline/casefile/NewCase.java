package org.coldpleat.ui.commandline.casefile;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.shared.source.Source;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.text.Texts;

/** A case of comments and blank lines, and what stands in where a case cannot do without. */
final class NewCase {
    private static final String TEMPLATE = "new-case.yaml";

    /** Usual values of what a filter cannot do without. */
    @Source("common practice, no source")
    private static final List<String[]> OF_A_FILTER = List.of(
            new String[] {"bypass.position", "dome"},
            new String[] {"bypass.openingPressure", "8 to 22 psi (guessed)"},
            new String[] {"medium.family", "cellulose"});

    @Source("common practice, no source")
    private static final String USUAL_AREA = "400 to 1000 cm2 (guessed)";

    private static final List<String> COUNTED = List.of("pleats.count", "pleats.depth", "pleats.height");

    /**
     * A case that can be worked out.
     *
     * @param draft the case
     * @param notes what stands in, as a sentence; empty if nothing does
     */
    record Completed(CaseDraft draft, Optional<String> notes) {}

    private NewCase() {}

    /** The case with comments and nothing told. */
    static CaseDraft blank() {
        try (InputStream in = NewCase.class.getResourceAsStream(TEMPLATE)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + TEMPLATE);
            }
            return CaseDraft.open(TEMPLATE, new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .draft();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The case with usual values where it cannot do without any. */
    static Completed complete(CaseDraft told) {
        List<String> filled = new ArrayList<>();
        CaseDraft draft = filled(told, "oil.grade", "5W-30", filled);
        draft = filled(draft, "engine.kind", "car", filled);
        draft = filled(
                draft, "engine.displacement", size(draft.value("engine.kind").orElseThrow()), filled);
        for (int i = 0; i < Math.max(1, told.count("candidates")); i++) {
            draft = filter(draft, "candidates[" + i + "].", i, filled);
        }
        if (filled.isEmpty()) {
            return new Completed(draft, Optional.empty());
        }
        String words =
                String.join("; ", filled.stream().map(FieldWords::of).distinct().toList());
        String notes = Texts.get("new.notes", words);
        return new Completed(draft.set("notes", notes), Optional.of(notes));
    }

    private static CaseDraft filter(CaseDraft told, String filter, int number, List<String> filled) {
        CaseDraft draft = told.value(filter + "name").isPresent()
                ? told
                : told.set(filter + "name", Texts.get("new.filterName", number + 1));
        for (String[] usual : OF_A_FILTER) {
            boolean without = draft.value(filter + "bypass.position")
                    .filter(position -> position.equals("none") || position.equals("block"))
                    .isPresent();
            if (!(without && usual[0].equals("bypass.openingPressure"))) {
                draft = filled(draft, filter + usual[0], usual[1], filled);
            }
        }
        boolean hasArea = draft.value(filter + "medium.statedArea").isPresent()
                || COUNTED.stream().map(key -> filter + key).map(draft::value).allMatch(Optional::isPresent);
        return hasArea ? draft : filled(draft, filter + "medium.statedArea", USUAL_AREA, filled);
    }

    private static CaseDraft filled(CaseDraft draft, String path, String usual, List<String> filled) {
        if (draft.value(path).isPresent()) {
            return draft;
        }
        filled.add(path);
        return draft.set(path, usual);
    }

    /** A usual displacement of a kind of engine. */
    @Source("common practice, no source")
    private static String size(String kind) {
        return switch (kind) {
            case "utility" -> "0.4 L (guessed)";
            case "motorcycle" -> "0.65 L (guessed)";
            case "lightTruck" -> "5.3 L (guessed)";
            case "heavy" -> "10 L (guessed)";
            case "generator", "marine" -> "3 L (guessed)";
            default -> "2.0 L (guessed)";
        };
    }
}
