package org.coldpleat.ui.commandline;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.Sentences;

/** A chain of values as an indented list, from the answer down to what was read off the bench. */
final class ExplainText {
    private static final int DEEPEST_INDENT = 12;
    private static final String STEP = "  ";

    private static final double HOUR = 3600;

    private final UnitSystem system;
    private final ShownUnits units;
    private final List<String> lines = new ArrayList<>();

    private ExplainText(UnitSystem units) {
        system = units;
        this.units = ShownUnits.of(units);
    }

    static String of(Explanation explanation, UnitSystem units) {
        ExplainText page = new ExplainText(units);
        page.link(explanation, 0);
        return String.join("\n", page.lines) + "\n";
    }

    private void link(Explanation link, int depth) {
        String title = Sentences.explanation(link.key(), "title").orElse(link.key());
        String owner = FieldWords.subject(link);
        String subject = Texts.getOr("part." + owner, owner);
        String named = subject.isEmpty() ? title : title + " [" + subject + "]";
        String value = value(link);
        String spread = link.spread().isEmpty() ? "" : " (" + link.spread() + ")";
        put(depth, value.isEmpty() ? named : named + " = " + value + spread);
        if (!link.origin().isEmpty()) {
            put(depth + 1, Texts.get("explain.origin", link.origin()));
        }
        Sentences.explanation(link.key(), "equation")
                .ifPresent(equation -> put(depth + 1, Texts.get("explain.equation", equation)));
        Sentences.explanation(link.key(), "source")
                .ifPresent(source -> put(depth + 1, Texts.get("explain.source", source)));
        link.inputs().forEach(input -> link(input, depth + 1));
    }

    private String value(Explanation link) {
        if (!Double.isFinite(link.value())) {
            return "";
        }
        ShownUnit unit = unit(link.kind(), link.value());
        return (Figures.plain(unit.of(link.value())) + " " + unit.symbol()).strip();
    }

    private ShownUnit unit(Kind kind, double value) {
        boolean si = system == UnitSystem.SI;
        return switch (kind) {
            case TEMPERATURE -> units.temperature();
            case TEMPERATURE_DIFFERENCE -> units.temperatureDifference();
            case PRESSURE_DIFFERENCE, GAUGE_PRESSURE -> units.pressure();
            case FLOW_RATE -> units.flow();
            case AREA -> units.area();
            case ROTATION -> units.rotation();
            case LENGTH -> si ? ShownUnit.scaled("m", 1) : ShownUnit.scaled("mm", 1e3);
            case KINEMATIC_VISCOSITY -> si ? ShownUnit.scaled("m²/s", 1) : ShownUnit.scaled("cSt", 1e6);
            case DYNAMIC_VISCOSITY -> si ? ShownUnit.scaled("Pa·s", 1) : ShownUnit.scaled("mPa·s", 1e3);
            case BASIS_WEIGHT -> si ? ShownUnit.scaled("kg/m²", 1) : ShownUnit.scaled("g/m²", 1e3);
            case MASS -> si ? ShownUnit.scaled("kg", 1) : ShownUnit.scaled("g", 1e3);
            case MASS_RATE -> si ? ShownUnit.scaled("kg/s", 1) : ShownUnit.scaled("mg/h", 1e6 * HOUR);
            case DURATION -> si || Math.abs(value) < HOUR ? ShownUnit.scaled("s", 1) : ShownUnit.scaled("h", 1 / HOUR);
            case FRACTION -> ShownUnit.scaled("%", 100);
            case COUNT, RATIO -> ShownUnit.scaled("", 1);
            default -> ShownUnit.scaled(kind.siUnit(), 1);
        };
    }

    private void put(int depth, String text) {
        String indent = STEP.repeat(Math.min(depth, DEEPEST_INDENT));
        List<String> wrapped = Table.wrap(text, CompareText.WIDTH - indent.length() - STEP.length());
        lines.add(indent + wrapped.get(0));
        wrapped.stream().skip(1).forEach(line -> lines.add(indent + STEP + line));
    }
}
