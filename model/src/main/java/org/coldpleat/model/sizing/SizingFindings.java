package org.coldpleat.model.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.coldpleat.model.change.Design;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.sizing.SizingResult.Answer;
import org.coldpleat.model.sizing.SizingResult.Condition;
import org.coldpleat.model.sizing.SizingResult.Status;
import org.coldpleat.model.sizing.SizingResult.Variable;
import org.coldpleat.model.verdict.Verdict;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Text;

/** Sentences, assumptions and findings of a sizing. */
public final class SizingFindings {
    private final ResolvedCase resolved;
    private final SizingResult result;
    private final int position;
    private final List<Verdict> verdicts = new ArrayList<>();

    private SizingFindings(ResolvedCase resolved, SizingResult result) {
        this.resolved = resolved;
        this.result = result;
        position = resolved.positionOf(result.candidate()).orElseThrow();
    }

    /** The result with what the case says of itself and all that is to be said about it; findings it has stay. */
    public static SizingResult complete(ResolvedCase resolved, SizingResult bare) {
        SizingFindings findings = new SizingFindings(resolved, bare);
        bare.conditions().forEach(findings::condition);
        return new SizingResult(
                bare.title(),
                resolved.document().root().flag("invented").orElse(false),
                resolved.document().digest(),
                bare.candidate(),
                bare.variable(),
                bare.target(),
                bare.state(),
                bare.temperature(),
                bare.limit(),
                bare.confidence(),
                bare.draws(),
                bare.seed(),
                bare.present(),
                bare.conditions(),
                findings.verdicts,
                resolved.assumptions().stream()
                        .filter(one -> one.candidate() < 0 || one.candidate() == findings.position)
                        .toList(),
                findings.notices());
    }

    private void condition(Condition condition) {
        if (condition.loaded()) {
            say("size.loaded", Text.grams(condition.dirt()), Text.number(condition.loadRatio()));
        }
        present(condition);
        best(condition);
        condition.sure().forEach(answer -> sure(condition, answer));
        if (result.variable() == Variable.OPENING) {
            risks(condition);
        }
    }

    private void present(Condition condition) {
        String chance = Text.percent(condition.presentChance());
        double opening = condition.presentOpening();
        if (Double.isInfinite(opening)) {
            say(opening > 0 ? "size.presentAlways" : "size.presentNever", chance);
        } else if (!Double.isNaN(opening)) {
            say("size.presentOpens", chance, Text.celsius(opening));
        }
    }

    private void best(Condition condition) {
        Answer best = condition.best();
        switch (best.status()) {
            case FOUND ->
                say(
                        code("size.best."),
                        value(best.value(), best.label()),
                        Text.percent(best.chance()),
                        value(result.present(), ""),
                        change(best.value()));
            case ALWAYS -> say(code("size.any."), value(condition.low(), ""), value(condition.high(), ""));
            case NEVER -> {
                say(code("size.none."), value(condition.low(), ""), value(condition.high(), ""));
                reachable(best);
                say(code("size.why."));
            }
            case UNRESOLVED -> say("size.unresolved");
        }
    }

    private void sure(Condition condition, Answer answer) {
        String chance = Text.percent(result.confidence().orElseThrow());
        switch (answer.status()) {
            case FOUND ->
                say(code("size.sure."), value(answer.value(), answer.label()), chance, change(answer.value()));
            case ALWAYS -> say("size.sureAny", chance);
            case NEVER -> {
                say("size.sureNone", chance);
                say(
                        "size.sureReach",
                        value(answer.reachable(), answer.reachableLabel()),
                        Text.percent(answer.chance()));
                if (condition.best().status() == Status.FOUND) {
                    say("size.sureWhy");
                }
            }
            case UNRESOLVED -> say("size.unresolved");
        }
    }

    private void reachable(Answer answer) {
        String value = value(answer.reachable(), answer.reachableLabel());
        double opening = answer.reachableOpening();
        if (Double.isFinite(opening)) {
            say("size.reachOpens", value, Text.celsius(opening));
        } else {
            say("size.reach", value);
        }
    }

    /** What the medium must bear with the valve as it is and with the valve of the answer. */
    private void risks(Condition condition) {
        double answer = condition.sure().stream()
                .filter(one -> one.status() == Status.FOUND)
                .mapToDouble(Answer::value)
                .findFirst()
                .orElse(condition.best().value());
        if (Double.isFinite(answer)) {
            Design clean = Design.of(resolved, position);
            say(
                    "size.elementBears",
                    Text.kilopascals(ElementPeak.overRange(resolved, clean).pressure()),
                    Text.kilopascals(ElementPeak.overRange(
                                    resolved, clean.changed(change -> change.timesOpening(answer / result.present())))
                            .pressure()),
                    Text.kilopascals(answer));
        }
    }

    private List<Notice> notices() {
        Set<Notice> notices = new LinkedHashSet<>(resolved.oilNotices());
        notices.addAll(OilNotices.at(resolved.shared().oil().oil(), result.temperature()));
        notices.addAll(resolved.candidates().get(position).notices());
        notices.addAll(result.notices());
        String scope = code("size.scope.");
        notices.add(Notice.of(scope, Severity.INFO, result.candidate()));
        notices.add(Notice.of("size.draws", Severity.INFO, "", Integer.toString(result.draws()), result.seed() + ""));
        if (result.conditions().stream().anyMatch(Condition::loaded)) {
            notices.add(Notice.of("size.dirt", Severity.INFO, result.candidate()));
        }
        double missing = result.conditions().stream()
                .mapToDouble(Condition::unanswered)
                .max()
                .orElse(0);
        if (missing > 0) {
            notices.add(Notice.of("size.unanswered", Severity.WARNING, "", Text.percent(missing)));
        }
        if (result.variable() == Variable.GRADE) {
            notices.add(Notice.of("caution.grade", Severity.CAUTION, ""));
        } else {
            notices.add(Notice.of("caution.collapse", Severity.CAUTION, ""));
        }
        notices.add(Notice.of("caution.specification", Severity.CAUTION, ""));
        List<Notice> ordered = new ArrayList<>(notices);
        ordered.sort(Comparator.comparing(Notice::severity));
        return ordered;
    }

    private String code(String prefix) {
        return prefix + result.variable();
    }

    private String value(double value, String label) {
        return switch (result.variable()) {
            case AREA -> Text.area(value);
            case PLEATS -> Long.toString(Math.round(value));
            case OPENING -> Text.kilopascals(value);
            case RESISTANCE -> Text.resistance(value);
            case GRADE -> label;
        };
    }

    private String change(double value) {
        return Double.isNaN(result.present()) ? "" : Text.signedPercent(value / result.present() - 1);
    }

    private void say(String code, String... values) {
        verdicts.add(new Verdict(code, "", result.state(), List.of(result.candidate()), List.of(values)));
    }
}
