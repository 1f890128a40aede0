package org.coldpleat.ui.commandline.compare;

import java.util.List;
import java.util.OptionalDouble;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.ui.commandline.output.FindingsJson;
import org.coldpleat.ui.commandline.output.JsonText;
import org.coldpleat.ui.text.ProgramVersion;

/** A comparison as JSON, described by {@code compare-v1.schema.json}. A name that ends in {@code _u} is a standard uncertainty. */
public final class CompareJson {
    private final JsonText json = new JsonText();

    private CompareJson() {}

    public static String of(Comparison comparison) {
        CompareJson writer = new CompareJson();
        writer.write(comparison);
        return writer.json.finished();
    }

    private void write(Comparison comparison) {
        json.element()
                .text("schemaVersion", "compare-v1")
                .text("programVersion", ProgramVersion.text())
                .text("caseDigest", comparison.digest())
                .text("title", comparison.title())
                .flag("invented", comparison.invented())
                .number("from_K", comparison.from())
                .number("to_K", comparison.to())
                .array("namedTemperatures");
        for (NamedTemperature named : comparison.named()) {
            json.element()
                    .text("name", named.name())
                    .number("temperature_K", named.temperature())
                    .endObject();
        }
        json.endArray().array("candidates");
        comparison.candidates().forEach(this::candidate);
        json.endArray();
        FindingsJson.verdicts(json, comparison.verdicts());
        List<String> names =
                comparison.candidates().stream().map(CandidateResult::name).toList();
        FindingsJson.assumptions(json, comparison.assumptions(), names);
        FindingsJson.notices(json, comparison.notices());
        json.endObject();
    }

    private void candidate(CandidateResult candidate) {
        CandidateSheet sheet = candidate.sheet();
        json.element().text("name", candidate.name());
        banded("grossArea_m2", sheet.grossArea());
        banded("effectiveArea_m2", sheet.effectiveArea());
        optional("basisWeight_kg_m2", sheet.basisWeight());
        optional("solidity", sheet.solidity());
        banded("mediumResistance_1_m", sheet.mediumResistance());
        optional("permeability_m2", sheet.permeability());
        banded("channelFactor", sheet.channelFactor());
        json.number("crowdedShare", sheet.crowdedShare());
        banded("hotPressureDrop_Pa", sheet.hotPressureDrop());
        json.object("hotReference")
                .text("state", sheet.hotReference().state())
                .number("temperature_K", sheet.hotReference().temperature())
                .endObject();
        sheet.openingPressure()
                .ifPresentOrElse(
                        band -> banded("bypassOpeningPressure_Pa", band),
                        () -> json.nothing("bypassOpeningPressure_Pa").nothing("bypassOpeningPressure_Pa_u"));
        json.array("evidence");
        for (CandidateSheet.EvidenceLine line : sheet.evidence()) {
            json.element()
                    .text("kind", line.kind())
                    .number("mediumResistance_1_m", line.resistance())
                    .number("lnSigma", line.lnSigma())
                    .number("weight", line.weight())
                    .endObject();
        }
        json.endArray().array("openings");
        candidate.states().forEach(this::opening);
        json.endArray().endObject();
    }

    private void opening(StateResult state) {
        json.element()
                .text("setting", state.setting())
                .text("state", state.state())
                .text("answer", answer(state.answer()))
                .array("intervals_K");
        state.intervals().forEach(interval -> json.numbers("", interval));
        json.endArray();
        state.openingTemperature()
                .ifPresentOrElse(
                        band -> json.number("openingTemperature_K", band.value())
                                .number("openingTemperature_K_low", band.low())
                                .number("openingTemperature_K_high", band.high()),
                        () -> json.nothing("openingTemperature_K")
                                .nothing("openingTemperature_K_low")
                                .nothing("openingTemperature_K_high"));
        banded("greatestRatio", state.greatestRatio());
        json.number("greatestRatioAt_K", state.greatestRatioAt())
                .number("fixedFlowOpening_K", state.fixedFlowOpening())
                .number("chanceOpen", state.chanceOpen())
                .array("shares");
        for (StateResult.ShareAt at : state.shares()) {
            json.element().text("name", at.name()).number("temperature_K", at.temperature());
            banded("share", at.share());
            json.number("pressureDrop_Pa", at.pressureDrop())
                    .text("status", at.status())
                    .endObject();
        }
        json.endArray().endObject();
    }

    /** The answer as the schema spells it. */
    static String answer(StateResult.Answer answer) {
        return switch (answer) {
            case NEVER -> "never";
            case ALWAYS -> "always";
            case BELOW -> "below";
            case INTERVALS -> "intervals";
            case NO_VALVE -> "noValve";
            case UNRESOLVED -> "unresolved";
        };
    }

    private void banded(String name, Band band) {
        json.number(name, band.value()).number(name + "_u", band.standardUncertainty());
    }

    private void optional(String name, OptionalDouble value) {
        json.number(name, value.orElse(Double.NaN));
    }
}
