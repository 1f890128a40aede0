package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.coldpleat.model.pleat.Allowance;
import org.coldpleat.model.pleat.AreaRoutes;
import org.coldpleat.model.pleat.AreaSheet;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;

/**
 * Medium area of a candidate by every route its sheet allows. Buried edges are taken off once: by an allowance on the
 * strip width if there is one, else by what the sheet says is buried at each end.
 */
final class AreaBuilder {
    private AreaBuilder() {}

    /**
     * Areas and lengths of the unfolded medium.
     *
     * @param gross one side, after allowances [m2]
     * @param effective after buried edges, folds not yet taken off [m2]
     * @param stripLength after allowances [m], if the strip was measured
     * @param height of the pleats between the glue beads [m], if known
     * @param notices where routes disagree
     */
    record Areas(
            Measured gross,
            double effective,
            OptionalDouble stripLength,
            OptionalDouble height,
            List<Notice> notices) {}

    /** True if the sheet gives at least one route to the area. */
    static boolean hasRoute(Section sheet) {
        Optional<Section> medium = sheet.section("medium");
        Optional<Section> strip = medium.flatMap(section -> section.section("strip"));
        boolean unfolded =
                strip.isPresent() && strip.get().has("length") && strip.get().has("width");
        boolean stated = medium.isPresent() && medium.get().has("statedArea");
        Optional<Section> pleats = sheet.section("pleats");
        boolean counted = pleats.isPresent()
                && pleats.get().has("count")
                && pleats.get().has("height")
                && (pleats.get().has("depth") || hasDiameters(sheet));
        return unfolded || stated || counted;
    }

    private static boolean hasDiameters(Section sheet) {
        Optional<Section> element = sheet.section("element");
        return element.isPresent()
                && element.get().has("outsideDiameter")
                && element.get().has("insideDiameter");
    }

    static Areas areas(Section sheet, Optional<Measured> thickness, Inputs inputs, String name) {
        Optional<Section> strip = sheet.section("medium")
                .flatMap(section -> section.section("strip"))
                .filter(section -> section.has("length") && section.has("width"));
        Optional<Section> pleats = sheet.section("pleats");
        Measured none = Measured.exact(Kind.LENGTH, 0, Provenance.MEASURED);
        Measured buried = pleats.flatMap(section -> inputs.measured(section, "buriedPerEnd"))
                .orElse(none);
        boolean glueOff = strip.map(section -> onWidth(section)).orElse(false);
        Optional<Measured> length = strip.map(section -> corrected(section, "length", inputs));
        Optional<Measured> width = strip.map(section -> corrected(section, "width", inputs));
        Optional<Measured> unfolded = length.map(value -> AreaRoutes.strip(value, width.orElseThrow()));
        Optional<Measured> count = pleats.flatMap(section -> inputs.measured(section, "count"));
        Optional<Measured> height = pleats.flatMap(section -> inputs.measured(section, "height"));
        Optional<Measured> byDiameters = depthFromDiameters(sheet, inputs);
        Optional<Measured> depth =
                pleats.flatMap(section -> inputs.measured(section, "depth")).or(() -> byDiameters);
        Optional<Measured> open = height.map(value -> less(value, buried));
        Optional<Measured> counted = count.isPresent() && depth.isPresent() && height.isPresent()
                ? Optional.of(AreaRoutes.counted(count.get(), depth.get(), glueOff ? open.get() : height.get()))
                : Optional.empty();
        Optional<Measured> stated = sheet.section("medium").flatMap(section -> inputs.measured(section, "statedArea"));
        boolean bury = !glueOff && height.isPresent();
        Measured full = height.orElse(Measured.exact(Kind.LENGTH, 1, Provenance.MEASURED));
        AreaSheet areas = AreaSheet.of(unfolded, counted, stated, full, bury ? buried : none, name);
        List<Notice> notices = new ArrayList<>(areas.notices());
        if (length.isPresent() && count.isPresent() && byDiameters.isPresent() && thickness.isPresent()) {
            AreaSheet.compareDepths(AreaRoutes.depthFromStrip(length.get(), count.get()), byDiameters.get(), name)
                    .ifPresent(notices::add);
        }
        return new Areas(
                areas.gross(),
                areas.effective().value(),
                length.isPresent() ? OptionalDouble.of(length.get().value()) : OptionalDouble.empty(),
                open.isPresent() ? OptionalDouble.of(open.get().value()) : Inputs.number(width),
                notices);
    }

    private static Measured less(Measured height, Measured buried) {
        return new Measured(
                height.kind(),
                height.value() - 2 * buried.value(),
                height.halfWidth(),
                height.spread(),
                height.provenance(),
                height.repeats(),
                "");
    }

    private static Optional<Measured> depthFromDiameters(Section sheet, Inputs inputs) {
        if (!hasDiameters(sheet)) {
            return Optional.empty();
        }
        Section element = sheet.section("element").orElseThrow();
        return Optional.of(AreaRoutes.depthFromDiameters(
                inputs.measured(element, "outsideDiameter").orElseThrow(),
                inputs.measured(element, "insideDiameter").orElseThrow()));
    }

    private static boolean onWidth(Section strip) {
        return strip.sections("allowances").stream()
                .anyMatch(allowance -> allowance.choice("on").orElse("").equals("width"));
    }

    private static Measured corrected(Section strip, String key, Inputs inputs) {
        List<Allowance> allowances = new ArrayList<>();
        for (Section allowance : strip.sections("allowances")) {
            if (allowance.choice("on").orElse("").equals(key)) {
                allowances.add(new Allowance(
                        allowance.text("reason").orElse(""),
                        inputs.measured(allowance, "by").orElseThrow()));
            }
        }
        return AreaRoutes.corrected(inputs.measured(strip, key).orElseThrow(), allowances);
    }
}
