package org.coldpleat.model.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.oil.OilResult;
import org.coldpleat.model.resolve.candidate.CandidateBuilder;
import org.coldpleat.model.resolve.candidate.CandidateCheck;
import org.coldpleat.model.resolve.candidate.TestReport;
import org.coldpleat.model.resolve.engine.EngineCheck;
import org.coldpleat.model.resolve.engine.EngineCompletion;
import org.coldpleat.model.resolve.engine.OilBuilder;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.resolve.input.OperatingState;
import org.coldpleat.model.resolve.input.Problems;
import org.coldpleat.shared.casefile.CaseDocument;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.NoticeText;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.UnitSystem;

/** Turns a document into computing form, or says with place and remedy why that cannot be. */
public final class CaseResolver {
    /** Range looked at if a case names none [K]: -40 to 120 degrees C. */
    private static final double DEFAULT_FROM = 233.15;

    private static final double DEFAULT_TO = 393.15;

    /** Oil temperatures shown if a case names none [K]: -20, 0 and 90 degrees C. */
    private static final double[] DEFAULT_NAMED = {253.15, 273.15, 363.15};

    private CaseResolver() {}

    public static Resolution resolve(CaseDocument written, Optional<ResolvedCase> before) {
        EngineCompletion.Completed completed = EngineCompletion.complete(written);
        CaseDocument document = completed.document();
        Section root = document.root();
        Problems problems = new Problems(document.file());
        Section oil = root.section("oil").orElseThrow();
        Optional<OilResult.Resolved> made = checkOil(oil, problems)
                .flatMap(main -> oil.section("topUp")
                        .map(other -> checkOil(other, problems).map(added -> blended(main, added, other)))
                        .orElse(Optional.of(main)));
        root.section("engine")
                .ifPresent(engine -> EngineCheck.check(engine, made.map(OilResult.Resolved::oil), problems));
        for (Section sheet : root.sections("candidates")) {
            CandidateCheck.check(sheet, problems);
            sheet.section("tests").flatMap(tests -> tests.section("oil")).ifPresent(own -> checkOil(own, problems));
        }
        if (!problems.isEmpty()) {
            return new Resolution(Optional.empty(), problems.all());
        }
        Optional<Section> range = root.section("temperatures");
        double from = value(range, "from", DEFAULT_FROM);
        double to = value(range, "to", DEFAULT_TO);
        ResolvedCase resolved = new ResolvedCase(
                completed,
                from,
                to,
                named(range),
                operatingStates(root),
                made.orElseThrow().notices(),
                before);
        testsThatGiveNothing(resolved, root, problems);
        return problems.isEmpty()
                ? new Resolution(Optional.of(resolved), List.of())
                : new Resolution(Optional.empty(), problems.all());
    }

    /** Where the tests are the only evidence and all of them refuse, there is nothing to compute with. */
    private static void testsThatGiveNothing(ResolvedCase resolved, Section root, Problems problems) {
        List<Section> sheets = root.sections("candidates");
        for (int i = 0; i < sheets.size(); i++) {
            if (CandidateBuilder.isNothingKnown(resolved.candidates().get(i))) {
                String reasons = String.join(
                        " ",
                        resolved.bench(i).reports().stream()
                                .filter(report -> report.status().equals(TestReport.REFUSED))
                                .flatMap(report -> report.notices().stream())
                                .map(notice -> NoticeText.sentence(notice, UnitSystem.METRIC))
                                .toList());
                problems.addWhole(
                        sheets.get(i).section("tests").orElse(sheets.get(i)), "candidate.testsGiveNothing", reasons);
            }
        }
    }

    private static double value(Optional<Section> section, String key, double fallback) {
        return section.flatMap(one -> one.quantity(key)).map(Measured::value).orElse(fallback);
    }

    private static Optional<OilResult.Resolved> checkOil(Section oil, Problems problems) {
        OilResult result = OilResolver.resolve(OilBuilder.spec(oil, Inputs.shared()));
        if (result instanceof OilResult.Refused refused) {
            Section place = refused.anchors().isEmpty()
                    ? oil
                    : anchorSection(oil, refused.anchors().get(0));
            problems.addWhole(place, refused.fault().code(), refused.values().toArray(String[]::new));
            return Optional.empty();
        }
        return Optional.of((OilResult.Resolved) result);
    }

    /** Two sound oils as one, with what was found about both. */
    private static OilResult.Resolved blended(OilResult.Resolved main, OilResult.Resolved added, Section topUp) {
        Measured share = Inputs.shared().folded(topUp, "share").orElseThrow();
        Oil oil = OilBuilder.blend(main.oil(), added.oil(), share).oil();
        List<Notice> notices = new ArrayList<>(main.notices());
        notices.addAll(added.notices());
        notices.add(OilNotices.blended(oil, added.oil(), share.value()));
        return new OilResult.Resolved(oil, notices);
    }

    private static Section anchorSection(Section oil, int position) {
        List<Section> points = oil.sections("points");
        return position < points.size()
                ? points.get(position)
                : oil.section("coldPoint").orElse(oil);
    }

    private static List<NamedTemperature> named(Optional<Section> range) {
        List<NamedTemperature> named = new ArrayList<>();
        range.ifPresent(section -> section.sections("named")
                .forEach(one -> named.add(new NamedTemperature(
                        one.text("name").orElse(""),
                        one.quantity("temperature").orElseThrow().value()))));
        if (named.isEmpty()) {
            for (double temperature : DEFAULT_NAMED) {
                named.add(new NamedTemperature("", temperature));
            }
        }
        return named;
    }

    private static List<OperatingState> operatingStates(Section root) {
        List<OperatingState> operatingStates = new ArrayList<>();
        root.section("flowStand")
                .ifPresent(stand -> stand.sections("states")
                        .forEach(state ->
                                operatingStates.add(operatingState(OperatingState.FLOW_STAND, state, "flow"))));
        root.section("engine")
                .ifPresent(engine -> engine.sections("states")
                        .forEach(state -> operatingStates.add(operatingState(OperatingState.ENGINE, state, "speed"))));
        return operatingStates;
    }

    private static OperatingState operatingState(String setting, Section state, String drive) {
        OperatingState found = OperatingState.of(
                setting,
                state.text("name").orElseThrow(),
                state.quantity(drive).orElseThrow().value());
        return Optional.of(state)
                .filter(one -> setting.equals(OperatingState.ENGINE))
                .flatMap(one -> one.choice("metal"))
                .map(metal -> new OperatingState(
                        found.setting(),
                        found.name(),
                        found.drive(),
                        metal.equals("running") ? OperatingState.Metal.RUNNING : OperatingState.Metal.SOAKED))
                .orElse(found);
    }
}
