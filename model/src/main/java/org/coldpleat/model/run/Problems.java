package org.coldpleat.model.run;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.Section;

/** Collects what makes a case impossible to compute although each of its values reads well. */
final class Problems {
    private final String file;
    private final List<CaseProblem> found = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    void add(Section section, String key, String code, String... values) {
        found.add(new CaseProblem(
                file, section.lineOf(key), 0, section.pathOf(key), section.words() + " " + key, code, List.of(values)));
    }

    void addWhole(Section section, String code, String... values) {
        found.add(new CaseProblem(file, section.line(), 0, section.path(), section.words(), code, List.of(values)));
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<CaseProblem> all() {
        return List.copyOf(found);
    }
}
