package org.coldpleat.ui.commandline.compare;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.coldpleat.model.certainty.Band;
import org.coldpleat.model.certainty.StateResult;
import org.coldpleat.model.resolve.input.NamedTemperature;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.model.verdict.Comparison;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.table.CsvWriter;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.ShownUnits;
import org.coldpleat.ui.text.Texts;

/** A comparison for a spreadsheet: one row a candidate and state, units in the header, full precision. */
public final class CompareCsv {
    private final ShownUnits units;
    private final CsvWriter csv = new CsvWriter();

    private CompareCsv(UnitSystem units) {
        this.units = ShownUnits.of(units);
    }

    public static String of(Comparison comparison, UnitSystem units) {
        CompareCsv writer = new CompareCsv(units);
        writer.head(comparison.named());
        for (CandidateResult candidate : comparison.candidates()) {
            for (StateResult state : candidate.states()) {
                writer.row(candidate, state, comparison.named().size());
            }
        }
        return writer.csv.finished();
    }

    private void head(List<NamedTemperature> named) {
        String area = units.area().symbol();
        String pressure = units.pressure().symbol();
        String temperature = units.temperature().symbol();
        csv.text(Texts.get("csv.candidate"))
                .text(Texts.get("csv.setting"))
                .text(Texts.get("csv.state"))
                .text(Texts.get("csv.answer"));
        csv.text(Texts.get("csv.opening", temperature))
                .text(Texts.get("csv.openingLow", temperature))
                .text(Texts.get("csv.openingHigh", temperature));
        csv.text(Texts.get("csv.intervals", temperature))
                .text(Texts.get("csv.greatestRatio"))
                .text(Texts.get("csv.chanceOpen"));
        for (NamedTemperature at : named) {
            csv.text(Texts.get(
                    "csv.share", at.name(), Figures.plain(units.temperature().of(at.temperature())), temperature));
        }
        both("csv.grossArea", area, area);
        both("csv.effectiveArea", area, area);
        both("csv.resistance", "1/m", "1/m");
        csv.text(Texts.get("csv.evidence"))
                .text(Texts.get("csv.basisWeight", units.of(Kind.BASIS_WEIGHT).symbol()))
                .text(Texts.get("csv.solidity"))
                .text(Texts.get("csv.permeability", units.of(Kind.PERMEABILITY).symbol()))
                .text(Texts.get("csv.channelFactor"))
                .text(Texts.get("csv.crowded"));
        both("csv.hotDrop", pressure, pressure);
        both("csv.openingPressure", pressure, pressure);
        csv.endRow();
    }

    private void both(String key, String unit, String spreadUnit) {
        csv.text(Texts.get(key, unit)).text(Texts.get("csv.uncertainty", Texts.get(key, spreadUnit)));
    }

    private void row(CandidateResult candidate, StateResult state, int named) {
        CandidateSheet sheet = candidate.sheet();
        csv.text(candidate.name()).text(state.setting()).text(state.state()).text(CompareJson.answer(state.answer()));
        state.openingTemperature()
                .ifPresentOrElse(
                        band -> csv.number(units.temperature().of(band.value()))
                                .number(units.temperature().of(band.low()))
                                .number(units.temperature().of(band.high())),
                        () -> csv.text("").text("").text(""));
        csv.text(state.intervals().stream()
                .map(i -> Figures.fixed(units.temperature().of(i[0]), 2) + ".."
                        + Figures.fixed(units.temperature().of(i[1]), 2))
                .collect(Collectors.joining(" ", "[", "]")));
        csv.number(state.greatestRatio().value()).number(state.chanceOpen());
        for (int n = 0; n < named; n++) {
            csv.number(n < state.shares().size() ? state.shares().get(n).share().value() : Double.NaN);
        }
        band(sheet.grossArea(), units.area());
        band(sheet.effectiveArea(), units.area());
        band(sheet.mediumResistance(), ShownUnit.scaled("1/m", 1));
        csv.text(
                sheet.evidence().stream().map(CandidateSheet.EvidenceLine::kind).collect(Collectors.joining("; ")));
        optional(sheet.basisWeight(), units.of(Kind.BASIS_WEIGHT).factor());
        optional(sheet.solidity(), 1);
        optional(sheet.permeability(), units.of(Kind.PERMEABILITY).factor());
        csv.number(sheet.channelFactor().value()).number(sheet.crowdedShare());
        band(sheet.hotPressureDrop(), units.pressure());
        sheet.openingPressure()
                .ifPresentOrElse(
                        band -> band(band, units.pressure()), () -> csv.text("").text(""));
        csv.endRow();
    }

    private void band(Band band, ShownUnit unit) {
        csv.number(unit.of(band.value())).number(unit.ofDifference(band.standardUncertainty()));
    }

    private void optional(OptionalDouble value, double factor) {
        csv.number(factor * value.orElse(Double.NaN));
    }
}
