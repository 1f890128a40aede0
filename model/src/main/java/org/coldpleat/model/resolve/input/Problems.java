package org.coldpleat.model.resolve.input;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.casefile.Section;

/** Collects what makes a case impossible to compute although each of its values reads well. */
public final class Problems {
    private final String file;
    private final List<CaseProblem> found = new ArrayList<>();

    public Problems(String file) {
        this.file = file;
    }

    public void add(Section section, String key, String code, String... values) {
        found.add(new CaseProblem(
                file, section.lineOf(key), 0, section.pathOf(key), section.words() + " " + key, code, List.of(values)));
    }

    public void addWhole(Section section, String code, String... values) {
        found.add(new CaseProblem(file, section.line(), 0, section.path(), section.words(), code, List.of(values)));
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public List<CaseProblem> all() {
        return List.copyOf(found);
    }
}
