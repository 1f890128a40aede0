package org.coldpleat.ui.desktop.view.answer;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.coldpleat.model.steady.QuickCurves;
import org.coldpleat.model.steady.Trial;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Unit;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.desktop.view.part.WindowTexts;
import org.coldpleat.ui.desktop.viewmodel.CaseView;
import org.coldpleat.ui.desktop.viewmodel.Knob;
import org.coldpleat.ui.desktop.viewmodel.WhatIf;
import org.coldpleat.ui.service.TriedOut;
import org.coldpleat.ui.text.Pages;

/** Says what was tried and what it changes. */
final class WhatIfWords {
    private static final double HOUR = 3600;
    private static final MathContext DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);

    private final UnitSystem units;

    WhatIfWords(UnitSystem units) {
        this.units = units;
    }

    /** The value of a knob as it stands. */
    String value(WhatIf tried, Knob knob) {
        return quantity(knob.kind(), tried.value(knob));
    }

    private String quantity(Kind kind, double value) {
        if (kind == Kind.DURATION) {
            return number(value / HOUR) + " h";
        }
        Unit unit = units.unit(kind, value);
        return number(unit.fromSi(value)) + " " + unit.symbol().replace('2', '\u00b2');
    }

    private static String number(double value) {
        BigDecimal number = new BigDecimal(value).round(DIGITS);
        return number.signum() == 0 ? "0" : number.toPlainString();
    }

    /** What was moved, and what the candidate does before and after. */
    String sentence(WhatIf tried, TriedOut out, CaseView view) {
        if (tried.moved().isEmpty()) {
            return WindowTexts.get("whatIf.nothing");
        }
        String moved = tried.moved().stream()
                .map(knob -> WindowTexts.get(
                        "whatIf.moved",
                        WindowTexts.get("whatIf." + knob.key()),
                        quantity(knob.kind(), knob.base()),
                        value(tried, knob)))
                .collect(Collectors.joining(WindowTexts.get("whatIf.and")));
        if (!out.isFilter()) {
            return WindowTexts.get("whatIf.problem", moved);
        }
        if (out.after().isEmpty()) {
            return WindowTexts.get("whatIf.full", moved, view.candidate());
        }
        Trial before = out.before();
        Trial after = out.after().get();
        String cold = Pages.temperature(view.temperature(), units);
        String seen = Double.isNaN(before.valveDifference()) || Double.isNaN(after.valveDifference())
                ? ""
                : WindowTexts.get(
                        "whatIf.seen",
                        cold,
                        quantity(Kind.PRESSURE_DIFFERENCE, before.valveDifference()),
                        quantity(Kind.PRESSURE_DIFFERENCE, after.valveDifference()),
                        quantity(Kind.FRACTION, before.bypassShare()),
                        quantity(Kind.FRACTION, after.bypassShare()));
        return WindowTexts.get(
                "whatIf.answer",
                moved,
                view.candidate(),
                view.state(),
                opens(before.curve()),
                opens(after.curve()),
                seen);
    }

    private String opens(QuickCurves.Candidate candidate) {
        if (candidate.openingPressure().isEmpty()) {
            return WindowTexts.get("whatIf.noValve");
        }
        double[] shown = candidate.curve().temperature();
        List<double[]> open = candidate.intervals();
        if (open.isEmpty()) {
            return WindowTexts.get(
                    "whatIf.never",
                    Pages.temperature(shown[0], units),
                    Pages.temperature(shown[shown.length - 1], units));
        }
        double warmest = open.get(open.size() - 1)[1];
        return warmest >= shown[shown.length - 1]
                ? WindowTexts.get("whatIf.always", Pages.temperature(warmest, units))
                : WindowTexts.get("whatIf.below", Pages.temperature(warmest, units));
    }
}
