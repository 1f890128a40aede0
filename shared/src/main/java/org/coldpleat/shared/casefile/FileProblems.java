package org.coldpleat.shared.casefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of one file. */
public final class FileProblems {
    private static final int MOST = 100;

    /** Letters of a text that are shown in a problem. */
    private static final int SHOWN = 60;

    private final String file;
    private final List<CaseProblem> found = new ArrayList<>();

    public FileProblems(String file) {
        this.file = file;
    }

    /** Notes a problem of a field. */
    public void add(Place place, int line, int column, String code, String... values) {
        found.add(new CaseProblem(file, line, column, place.path(), place.words(), code, List.of(values)));
    }

    /** Notes a problem of the file as such. */
    public void add(int line, int column, String code, String... values) {
        add(Place.ROOT, line, column, code, values);
    }

    /** Takes over the problems of another file. */
    public void addAll(FileProblems other) {
        found.addAll(other.found);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** All problems in file order, cut off with a remark if there are very many. */
    public List<CaseProblem> inFileOrder() {
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

    /** Long found texts are shown in part. */
    public static String cut(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= SHOWN ? line : line.substring(0, SHOWN) + " ...";
    }
}
