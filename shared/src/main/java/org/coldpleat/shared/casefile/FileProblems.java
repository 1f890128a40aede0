package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of one file. */
final class FileProblems {
    private static final int MOST = 100;

    private final String file;
    private final List<CaseProblem> found = new ArrayList<>();

    FileProblems(String file) {
        this.file = file;
    }

    /** Notes a problem of a field. */
    void add(Place place, int line, int column, String code, String... values) {
        found.add(new CaseProblem(file, line, column, place.path(), place.words(), code, List.of(values)));
    }

    /** Notes a problem of the file as such. */
    void add(int line, int column, String code, String... values) {
        add(Place.ROOT, line, column, code, values);
    }

    /** Takes over the problems of another file. */
    void addAll(FileProblems other) {
        found.addAll(other.found);
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** All problems in file order, cut off with a remark if there are very many. */
    List<CaseProblem> inFileOrder() {
        List<CaseProblem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt(CaseProblem::line).thenComparingInt(CaseProblem::column));
        if (sorted.size() <= MOST) {
            return List.copyOf(sorted);
        }
        List<CaseProblem> first = new ArrayList<>(sorted.subList(0, MOST));
        int rest = sorted.size() - MOST;
        first.add(new CaseProblem(file, 0, 0, "", "", "file.moreProblems", List.of(Integer.toString(rest))));
        return List.copyOf(first);
    }
}
