package org.coldpleat.ui.report.section;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.verdict.CandidateResult;
import org.coldpleat.model.verdict.CandidateSheet;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.ui.chart.file.Picture;
import org.coldpleat.ui.report.input.ReportInput;
import org.coldpleat.ui.service.FieldWords;
import org.jsoup.nodes.Element;

/** One bench sheet a candidate: cut open, what it amounts to, what was read; then what all candidates share. */
public final class SheetSection implements ReportSection {
    private static final List<String> SHARED = List.of(
            "shared.oil", "shared.engine", "shared.flowStand", "shared.temperatures", "shared.start", "shared.duty");

    @Override
    public Optional<Element> of(ReportInput input, Amounts amounts) {
        Element section = Tags.of("section", "").id("sheets");
        section.appendChild(Tags.text("h2", "", ReportTexts.get("sheets.title")));
        List<CandidateResult> candidates = input.comparison().candidates();
        EvidenceBlock evidence = new EvidenceBlock(amounts);
        for (int c = 0; c < candidates.size(); c++) {
            String head = "candidates[" + c + "].";
            Element sheet = Tags.of("section", "sheet").id("sheet-" + (c + 1));
            sheet.appendChild(
                    Tags.of("h3", "").appendChild(Tags.said(candidates.get(c).name())));
            Optional.ofNullable(input.said().get(head + "notes"))
                    .ifPresent(note -> sheet.appendChild(Tags.of("p", "").appendChild(Tags.said(note))));
            if (c < input.drawings().size()) {
                sheet.appendChild(Figure.of(Picture.of(input.drawings().get(c)), "cutaway-" + (c + 1)));
            }
            sheet.appendChild(amounts(input, amounts, candidates.get(c)));
            if (c < input.evidence().size()) {
                evidence.of(input.evidence().get(c)).ifPresent(sheet::appendChild);
            }
            sheet.appendChild(readings(input, amounts, head, ReportTexts.get("sheet.readings")));
            section.appendChild(sheet);
        }
        Element shared = Tags.of("section", "").id("shared");
        shared.appendChild(Tags.text("h3", "", ReportTexts.get("shared.title")));
        for (String key : SHARED) {
            String head = key.substring(key.indexOf('.') + 1) + ".";
            if (input.understood().keySet().stream().anyMatch(path -> path.startsWith(head))) {
                shared.appendChild(readings(input, amounts, head, ReportTexts.get(key)));
            }
        }
        return Optional.of(section.appendChild(shared));
    }

    private static Element amounts(ReportInput input, Amounts amounts, CandidateResult candidate) {
        CandidateSheet sheet = candidate.sheet();
        ChainFold folds = new ChainFold(input, amounts);
        Element body = Tags.of("tbody", "");
        row(body, "amount.grossArea", amounts.of(sheet.grossArea(), Kind.AREA));
        row(
                body,
                "amount.area",
                folds.under(amounts.of(sheet.effectiveArea(), Kind.AREA), chain(input, candidate, "mediumArea")));
        row(
                body,
                "amount.resistance",
                folds.under(
                        amounts.of(sheet.mediumResistance(), Kind.MEDIUM_RESISTANCE),
                        chain(input, candidate, "mediumResistance")));
        sheet.permeability()
                .ifPresent(value -> row(body, "amount.permeability", amounts.unbanded(value, Kind.PERMEABILITY)));
        sheet.basisWeight()
                .ifPresent(value -> row(body, "amount.basisWeight", amounts.unbanded(value, Kind.BASIS_WEIGHT)));
        sheet.solidity().ifPresent(value -> row(body, "amount.solidity", amounts.unbanded(value, Kind.FRACTION)));
        row(
                body,
                "amount.channels",
                folds.under(
                        amounts.above(1, sheet.channelFactor(), Kind.RATIO), chain(input, candidate, "channelFactor")));
        row(body, "amount.crowded", amounts.unbanded(sheet.crowdedShare(), Kind.FRACTION));
        sheet.openingPressure()
                .ifPresent(pressure -> row(body, "amount.opening", amounts.of(pressure, Kind.PRESSURE_DIFFERENCE)));
        Element drop = folds.under(
                amounts.of(sheet.hotPressureDrop(), Kind.PRESSURE_DIFFERENCE),
                chain(input, candidate, "hotPressureDrop"));
        Element at = Tags.of("div", "hint")
                .appendChild(Tags.said(sheet.hotReference().state()))
                .appendText(", ");
        drop.appendChild(at.appendChild(amounts.set(sheet.hotReference().temperature(), Kind.TEMPERATURE)));
        row(body, "amount.hotDrop", drop);
        return Tags.of("table", "")
                .appendChild(Tags.text("caption", "", ReportTexts.get("sheet.amounts")))
                .appendChild(body);
    }

    private static Optional<org.coldpleat.model.explain.Explanation> chain(
            ReportInput input, CandidateResult candidate, String quantity) {
        return input.chain(candidate.name(), "", quantity);
    }

    private static void row(Element body, String key, Element amount) {
        body.appendChild(Tags.row(Tags.text("span", "", ReportTexts.get(key)), amount));
    }

    private static Element readings(ReportInput input, Amounts amounts, String head, String caption) {
        Element body = Tags.of("tbody", "");
        for (Map.Entry<String, Measured> entry : input.understood().entrySet()) {
            if (entry.getKey().startsWith(head)) {
                body.appendChild(Tags.row(
                        Tags.quoted(FieldWords.of(entry.getKey().substring(head.length()))),
                        amounts.of(entry.getValue()),
                        Tags.said(written(input, entry))));
            }
        }
        for (Map.Entry<String, String> entry : input.said().entrySet()) {
            boolean own = entry.getKey().startsWith(head) && !input.understood().containsKey(entry.getKey());
            if (own && !entry.getKey().equals(head + "notes") && !entry.getKey().equals(head + "name")) {
                body.appendChild(Tags.row(
                        Tags.quoted(FieldWords.of(entry.getKey().substring(head.length()))),
                        Tags.said(entry.getValue()),
                        Tags.text("span", "", "")));
            }
        }
        return Tags.of("table", "readings")
                .appendChild(Tags.text("caption", "", caption))
                .appendChild(Tags.head(
                        ReportTexts.get("column.field"),
                        ReportTexts.get("column.understood"),
                        ReportTexts.get("column.written")))
                .appendChild(body);
    }

    private static String written(ReportInput input, Map.Entry<String, Measured> entry) {
        String note = input.said().get(entry.getKey());
        return note == null ? entry.getValue().written() : entry.getValue().written() + " - " + note;
    }
}
