package org.coldpleat.shared.casefile;

/** Checks that tie several fields of a case together. */
final class CaseChecks {
    private final Problems problems;

    CaseChecks(Problems problems) {
        this.problems = problems;
    }

    void check(Section root) {
        if (!root.has("flowStand") && !root.has("engine")) {
            problems.add(root.line(), root.column(), "case.noCircuit");
        }
    }
}
