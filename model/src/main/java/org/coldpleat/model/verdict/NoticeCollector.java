package org.coldpleat.model.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.coldpleat.model.certainty.StateAnalysis;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.certainty.measurement.EvidenceWriter;
import org.coldpleat.model.filter.FilterAssembly;
import org.coldpleat.model.oil.OilNotices;
import org.coldpleat.model.resolve.ResolvedCase;
import org.coldpleat.model.resolve.candidate.BuiltCandidate;
import org.coldpleat.model.typical.DefaultSpreads;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.notice.Severity;
import org.coldpleat.shared.quantity.Amount;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Look;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.Shown;
import org.coldpleat.shared.quantity.Spread;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/** Gathers the findings of a comparison: once per cause, cautions last. */
final class NoticeCollector {
    /** Stress at which deep-drawn steel begins to yield, low end [Pa]. */
    @Source("common practice, no source")
    private static final double COMMON_YIELD = 180e6;

    private NoticeCollector() {}

    static List<Notice> collect(ResolvedCase resolved, List<List<StateAnalysis>> operatingStates) {
        Set<Notice> notices = new LinkedHashSet<>(resolved.oilNotices());
        notices.addAll(OilNotices.at(resolved.shared().oil().oil(), resolved.from()));
        resolved.candidates().forEach(candidate -> notices.addAll(candidate.notices()));
        for (int i = 0; i < resolved.candidates().size(); i++) {
            valveConflicts(EvidenceWriter.report(resolved, i), notices);
        }
        for (List<StateAnalysis> operatingState : operatingStates) {
            statuses(operatingState, notices);
        }
        gallery(resolved, notices);
        valves(resolved, notices);
        cans(resolved, notices);
        notices.add(Notice.of("scope.cleanAndSteady", Severity.INFO, ""));
        notices.add(Notice.of("scope.cannotTell", Severity.INFO, ""));
        notices.add(Notice.of("caution.specification", Severity.CAUTION, ""));
        notices.add(Notice.of("caution.bench", Severity.CAUTION, ""));
        spreads(resolved).ifPresent(notices::add);
        List<Notice> ordered = new ArrayList<>(oncePerCause(notices));
        ordered.sort(Comparator.comparing(Notice::severity));
        return ordered;
    }

    /** Findings that differ in nothing but their place become one. */
    private static List<Notice> oncePerCause(Set<Notice> notices) {
        Map<Notice, List<String>> places = new LinkedHashMap<>();
        for (Notice notice : notices) {
            Notice cause = new Notice(notice.code(), notice.severity(), "", notice.values());
            places.computeIfAbsent(cause, key -> new ArrayList<>()).add(notice.place());
        }
        return places.entrySet().stream()
                .map(entry -> new Notice(
                        entry.getKey().code(),
                        entry.getKey().severity(),
                        String.join(", ", entry.getValue()),
                        entry.getKey().values()))
                .toList();
    }

    private static Optional<Notice> spreads(ResolvedCase resolved) {
        Map<String, Measured> written = resolved.document().quantities();
        long count = resolved.understood().entrySet().stream()
                .filter(entry -> entry.getValue().spread() != Spread.NONE)
                .filter(entry -> written.get(entry.getKey()).spread() == Spread.NONE)
                .count();
        double label = DefaultSpreads.complete(
                        "candidates[0].bypass.openingPressure",
                        Measured.exact(Kind.PRESSURE_DIFFERENCE, 1, Provenance.PRINTED))
                .halfWidth();
        return count == 0
                ? Optional.empty()
                : Optional.of(Notice.of("spread.usual", Severity.INFO, "", Shown.count(count), Amount.percent(label)));
    }

    /** Starved galleries and suction limits within the range, with the warmest temperature at which they occur. */
    private static void statuses(List<StateAnalysis> operatingState, Set<Notice> notices) {
        StateAnalysis first = operatingState.get(0);
        below("engine.starvedBelow", first, first.starvedUpTo()).ifPresent(notices::add);
        below("engine.suctionLimitedBelow", first, first.suctionLimitedUpTo()).ifPresent(notices::add);
    }

    private static Optional<Notice> below(String code, StateAnalysis one, double temperature) {
        return Double.isNaN(temperature)
                ? Optional.empty()
                : Optional.of(Notice.of(
                        code, Severity.WARNING, one.operatingState().name(), Amount.temperature(temperature)));
    }

    /** A printed opening pressure or spring rate that a scale test does not bear out. */
    private static void valveConflicts(EvidenceReport report, Set<Notice> notices) {
        for (String quantity : List.of("openingPressure", "springRate")) {
            report.combined(quantity)
                    .filter(EvidenceReport.Combined::conflict)
                    .ifPresent(one -> notices.add(Notice.of(
                            quantity.equals("springRate") ? "valve.springConflict" : "valve.openingConflict",
                            Severity.WARNING,
                            report.candidate(),
                            value(one, "stated"),
                            value(one, "scaleTest"))));
        }
    }

    private static Amount value(EvidenceReport.Combined combined, String name) {
        return combined.members().stream()
                .filter(member -> member.name().equals(name))
                .map(member -> combined.quantity().equals("springRate")
                        ? new Amount(Look.SPRING, member.median())
                        : Amount.pressure(member.median()))
                .findFirst()
                .orElseThrow();
    }

    /** Reading over opening pressure of a relief valve from which the valve may have been open [1]. */
    private static final double NEAR_RELIEF = 0.85;

    private static void gallery(ResolvedCase resolved, Set<Notice> notices) {
        resolved.document().root().section("engine").ifPresent(engine -> reading(engine, notices));
        resolved.shared().engine().ifPresent(engine -> {
            engine.laminarShare()
                    .ifPresent(share ->
                            notices.add(Notice.of("engine.laminarShare", Severity.INFO, "", Amount.percent(share))));
            if (engine.reliefs().isEmpty()) {
                notices.add(Notice.of("engine.noRelief", Severity.CAUTION, ""));
            }
        });
    }

    private static void reading(Section engine, Set<Notice> notices) {
        Optional<Measured> read = engine.section("gallery")
                .flatMap(gallery -> gallery.section("hotReading"))
                .flatMap(reading -> reading.quantity("pressure"));
        for (Section relief : engine.sections("reliefValves")) {
            Optional<Measured> opening = relief.quantity("openingPressure");
            if (read.isPresent()
                    && opening.isPresent()
                    && read.get().value() > NEAR_RELIEF * opening.get().value()) {
                notices.add(Notice.of(
                        "engine.readingNearRelief",
                        Severity.WARNING,
                        "",
                        Amount.pressure(read.get().value()),
                        Amount.pressure(opening.get().value())));
            }
        }
    }

    private static void valves(ResolvedCase resolved, Set<Notice> notices) {
        boolean block = resolved.shared()
                .engine()
                .map(engine -> engine.blockValve().isPresent())
                .orElse(false);
        for (BuiltCandidate candidate : resolved.candidates()) {
            FilterAssembly filter = candidate.filter();
            if (filter.elementValve().isEmpty() && !block) {
                notices.add(Notice.of("valve.noBypass", Severity.CAUTION, candidate.name()));
            }
            if (filter.elementValve().isPresent() && block) {
                double own = filter.elementValve().get().openingPressure();
                double other = resolved.shared()
                        .engine()
                        .orElseThrow()
                        .blockValve()
                        .orElseThrow()
                        .openingPressure();
                notices.add(Notice.of(
                        own <= other ? "valve.ownOpensFirst" : "valve.blockOpensFirst",
                        Severity.INFO,
                        candidate.name(),
                        Amount.pressure(own),
                        Amount.pressure(other)));
            }
        }
    }

    /** Thin-cylinder hoop stress at the highest relief setting of the can that carries most, as an order of size. */
    private static void cans(ResolvedCase resolved, Set<Notice> notices) {
        double pressure = resolved.shared()
                .engine()
                .map(engine -> engine.reliefs().stream()
                        .mapToDouble(relief -> relief.setPressure())
                        .max()
                        .orElse(0))
                .orElse(0.0);
        if (pressure == 0) {
            return;
        }
        String worst = "";
        double greatest = 0;
        double yieldStress = COMMON_YIELD;
        for (Section sheet : resolved.document().root().sections("candidates")) {
            double stress = hoopStress(sheet, pressure);
            if (stress > greatest) {
                greatest = stress;
                worst = sheet.text("name").orElse("");
                yieldStress = sheet.section("outside")
                        .flatMap(outside -> outside.quantity("yieldStrength"))
                        .map(Measured::low)
                        .orElse(COMMON_YIELD);
            }
        }
        if (greatest > 0) {
            notices.add(Notice.of(
                    "can.hoopStress",
                    Severity.CAUTION,
                    worst,
                    Amount.pressure(pressure),
                    new Amount(Look.STRESS, greatest),
                    new Amount(Look.STRESS, yieldStress)));
        }
    }

    /** Stress in the can wall [Pa], {@code p (D - t)/(2 t)}; 0 if diameter or wall are not known. */
    private static double hoopStress(Section sheet, double pressure) {
        Optional<Section> outside =
                sheet.section("outside").filter(one -> one.has("diameter") && one.has("wallThickness"));
        if (outside.isEmpty()) {
            return 0;
        }
        double diameter =
                outside.get().quantity("diameter").map(Measured::value).orElseThrow();
        double wall =
                outside.get().quantity("wallThickness").map(Measured::value).orElseThrow();
        return pressure * (diameter - wall) / (2 * wall);
    }
}
