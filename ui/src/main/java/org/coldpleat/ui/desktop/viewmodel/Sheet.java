package org.coldpleat.ui.desktop.viewmodel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.coldpleat.shared.casefile.catalog.Field;
import org.coldpleat.shared.casefile.catalog.FieldCatalog;
import org.coldpleat.shared.casefile.writing.CaseDraft;
import org.coldpleat.ui.service.Problem;

/** Lays a part of a draft out as lines, all fields of the catalog in the order of the work, known or not. */
final class Sheet {
    private static final Pattern ENTRY = Pattern.compile("\\[\\d+]");

    private final CaseDraft draft;
    private final List<Problem> problems;
    private final List<SheetRow> rows = new ArrayList<>();

    private Sheet(CaseDraft draft, List<Problem> problems) {
        this.draft = draft;
        this.problems = problems;
    }

    /**
     * The lines of a section or list entry.
     *
     * @param path such as {@code oil} or {@code candidates[0]}; blank for what stands at the top of the file
     */
    static List<SheetRow> rows(CaseDraft draft, List<Problem> problems, String path) {
        Sheet sheet = new Sheet(draft, problems);
        if (path.isEmpty()) {
            for (Field field : FieldCatalog.root().fields()) {
                if (field.isLeaf() && !field.key().equals("formatVersion")) {
                    sheet.value(field.key(), field, 0);
                }
            }
            return sheet.rows;
        }
        Field at = FieldCatalog.root();
        for (String step : ENTRY.matcher(path).replaceAll("").split("\\.", -1)) {
            at = at.field(step);
        }
        sheet.head(SheetRow.Type.SECTION, path, at, at.label(), 0);
        sheet.fields(path, at, 0);
        return sheet.rows;
    }

    private void fields(String path, Field section, int depth) {
        for (Field field : section.fields()) {
            String below = path + "." + field.key();
            switch (field.type()) {
                case SECTION -> {
                    head(SheetRow.Type.SECTION, below, field, field.label(), depth + 1);
                    fields(below, field, depth + 1);
                }
                case LIST -> {
                    for (int i = 0; i < draft.count(below); i++) {
                        String entry = below + "[" + i + "]";
                        head(SheetRow.Type.ENTRY, entry, field, field.label() + " " + (i + 1), depth + 1);
                        fields(entry, field, depth + 1);
                    }
                    head(SheetRow.Type.ANOTHER, below, field, field.label(), depth + 1);
                }
                default -> value(below, field, depth);
            }
        }
    }

    private void head(SheetRow.Type type, String path, Field field, String label, int depth) {
        rows.add(new SheetRow(type, path, depth, field, label, "", "", "", "", problem(path, false)));
    }

    private void value(String path, Field field, int depth) {
        rows.add(new SheetRow(
                SheetRow.Type.VALUE,
                path,
                depth,
                field,
                field.label(),
                draft.value(path).orElse(""),
                part(path, "plusMinus"),
                part(path, "provenance"),
                part(path, "note"),
                problem(path, true)));
    }

    private String part(String path, String key) {
        return Optional.ofNullable(draft.values().get(path + "." + key)).orElse("");
    }

    private String problem(String path, boolean withParts) {
        return problems.stream()
                .filter(problem -> problem.field().equals(path)
                        || (withParts && problem.field().startsWith(path + ".")))
                .map(Problem::text)
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
