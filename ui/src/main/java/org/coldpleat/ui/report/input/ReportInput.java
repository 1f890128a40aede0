package org.coldpleat.ui.report.input;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.coldpleat.model.certainty.ConfidenceResult;
import org.coldpleat.model.certainty.measurement.EvidenceReport;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.sizing.SettingsResult;
import org.coldpleat.model.sizing.SizingResult;
import org.coldpleat.model.steady.MapResult;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.model.verdict.service.ServiceResult;
import org.coldpleat.model.verdict.start.ColdStart;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.chart.cutaway.CutawayDrawing;

/**
 * Everything a report is written from.
 *
 * @param comparison the comparison
 * @param understood every quantity of the case by its path, with the usual spread where none was written
 * @param said every text, choice and yes or no of the case by its path
 * @param chains what numbers were computed from, by {@link #chainKey}
 * @param maps one map a candidate
 * @param drawings one cutaway a candidate, where there is a sheet to draw from
 * @param evidence one evidence report a candidate
 * @param confidence how sure the answers are; empty if left out
 * @param coldStart a cold start; empty if the case has none
 * @param service service life; empty if the case has none
 * @param settings every candidate over the opening pressure of its valve
 * @param pleats how many pleats each candidate would need, where they are known
 * @param units units of the report
 */
public record ReportInput(
        Comparison comparison,
        Map<String, Measured> understood,
        Map<String, String> said,
        Map<String, Explanation> chains,
        List<MapResult> maps,
        List<CutawayDrawing> drawings,
        List<EvidenceReport> evidence,
        Optional<ConfidenceResult> confidence,
        Optional<ColdStart> coldStart,
        Optional<ServiceResult> service,
        SettingsResult settings,
        List<SizingResult> pleats,
        UnitSystem units) {
    public ReportInput {
        Objects.requireNonNull(comparison, "comparison");
        understood = Collections.unmodifiableMap(new LinkedHashMap<>(understood));
        said = Collections.unmodifiableMap(new LinkedHashMap<>(said));
        chains = Collections.unmodifiableMap(new LinkedHashMap<>(chains));
        maps = List.copyOf(maps);
        drawings = List.copyOf(drawings);
        evidence = List.copyOf(evidence);
        pleats = List.copyOf(pleats);
    }

    /** Key of a chain: candidate, state (empty for what does not depend on it) and quantity. */
    static String chainKey(String candidate, String state, String quantity) {
        return quantity + "\n" + candidate + "\n" + state;
    }

    public Optional<Explanation> chain(String candidate, String state, String quantity) {
        return Optional.ofNullable(chains.get(chainKey(candidate, state, quantity)));
    }
}
