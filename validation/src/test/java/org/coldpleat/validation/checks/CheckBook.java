package org.coldpleat.validation.checks;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListSet;

/** What one run of the tests has recorded. It lives as long as the run: the only way to collect over test classes. */
final class CheckBook {
    private static final ConcurrentLinkedQueue<CheckRow> ROWS = new ConcurrentLinkedQueue<>();
    private static final ConcurrentSkipListSet<String> RAN = new ConcurrentSkipListSet<>();

    private CheckBook() {}

    static void add(CheckRow row) {
        ROWS.add(row);
    }

    static void ran(String testClass) {
        RAN.add(testClass);
    }

    static List<CheckRow> rows() {
        return List.copyOf(ROWS);
    }

    static Set<String> testsThatRan() {
        return Set.copyOf(RAN);
    }
}
