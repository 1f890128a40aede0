package org.coldpleat.ui.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.casefile.CaseProblem;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.notice.Wording;
import org.coldpleat.shared.quantity.QuantityProblem;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.UnitSystem;

/** The words of verdicts, assumptions, explanations and notices, from the bundles beside the code that reports them. */
public final class Sentences {
    private static final Wording VERDICTS = Wording.beside(Verdict.class, "verdicts");
    private static final Wording EXPLANATIONS = Wording.beside(Explanation.class, "explanations");
    private static final Wording PROBLEMS = Wording.beside(CaseProblem.class, "problems");

    private Sentences() {}

    /** The sentence of a verdict: its candidates come first among the placeholders, then its values, then the state. */
    public static String of(Verdict verdict, UnitSystem units) {
        List<Shown> values = new ArrayList<>(Shown.words(verdict.candidates()));
        values.addAll(verdict.values());
        values.add(Shown.word(verdict.state()));
        return VERDICTS.text(verdict.code(), values, units);
    }

    /** The sentence of a notice, without its place. */
    public static String of(Notice notice, UnitSystem units) {
        return NoticeText.sentence(notice, units);
    }

    /** Why a text was not understood as a quantity. */
    public static String of(QuantityProblem problem) {
        return PROBLEMS.text(problem.code(), problem.values());
    }

    /** Why an assumption was made. */
    public static String assumption(String code) {
        return VERDICTS.text(code, List.of());
    }

    /** What to measure for a group of unknowns, by its key such as {@code measure.oil}. */
    public static String measurement(String code) {
        return VERDICTS.text(code, List.of());
    }

    /** The thing alone that a group of unknowns is about: the words of its measurement up to the colon. */
    public static String measuredThing(String group) {
        String words = measurement(group.replaceAll("#.*", ""));
        int colon = words.indexOf(':');
        return colon < 0 ? words : words.substring(0, colon);
    }

    /** Name of a kind of evidence for the medium resistance. */
    public static String evidence(String kind) {
        return VERDICTS.has("evidence." + kind) ? VERDICTS.text("evidence." + kind, List.of()) : kind;
    }

    /** Title, equation or source of a link of an explanation; empty if it has none. */
    public static Optional<String> explanation(String key, String part) {
        String code = key + "." + part;
        return EXPLANATIONS.has(code) ? Optional.of(EXPLANATIONS.text(code, List.of())) : Optional.empty();
    }
}
