package org.coldpleat.model.resolve.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.coldpleat.model.pleat.Allowance;
import org.coldpleat.model.pleat.AreaRoutes;
import org.coldpleat.model.pleat.AreaSheet;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.typical.TypicalFilter;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.notice.Notice;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.shared.source.Source;

/**
 * Medium area of a candidate by every route its sheet allows. Buried edges are taken off once: by an allowance on the
 * strip width if there is one, else by what the sheet says is buried at each end, else by what is usual. A seam is taken off
 * where the area comes from a count or a stated figure; an unfolded strip shows its own.
 */
final class AreaBuilder {
    /** Most of the height that a usual glue bead hides at one end [1]. */
    @Source("common practice, no source")
    private static final double MOST_BURIED = 0.05;

    private static final Measured NONE = Measured.exact(Kind.LENGTH, 0, Provenance.MEASURED);

    private AreaBuilder() {}

    /**
     * Areas and lengths of the unfolded medium.
     *
     * @param gross one side, after allowances and seam [m2]
     * @param effective after buried edges, folds not yet taken off [m2]
     * @param stripLength after allowances and seam [m]
     * @param height of the pleats between the glue beads [m]
     * @param notices where routes disagree
     */
    record Areas(double gross, double effective, double stripLength, double height, List<Notice> notices) {}

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

    /**
     * Areas of a sheet.
     *
     * @param thickness of the medium, read or usual [m]
     */
    static Areas areas(PartReader parts, Optional<Measured> thickness, String name) {
        Section sheet = parts.sheet();
        Inputs inputs = parts.inputs();
        boolean flat = !parts.present("pleats");
        Optional<Section> strip = sheet.section("medium")
                .flatMap(section -> section.section("strip"))
                .filter(section -> section.has("length") && section.has("width"));
        Optional<Section> pleats = sheet.section("pleats");
        boolean glueOff = strip.map(section -> onWidth(section)).orElse(false);
        Optional<Measured> length = strip.map(section -> corrected(section, "length", inputs));
        Optional<Measured> width = strip.map(section -> corrected(section, "width", inputs));
        Optional<Measured> unfolded = length.map(value -> AreaRoutes.strip(value, width.orElseThrow()));
        Optional<Measured> count = pleats.flatMap(section -> inputs.measured(section, "count"));
        Optional<Measured> height = pleats.flatMap(section -> inputs.measured(section, "height"));
        Optional<Measured> stated = sheet.section("medium").flatMap(section -> inputs.measured(section, "statedArea"));
        Measured full = height.or(() -> width).orElseGet(() -> fullHeight(parts, stated.orElseThrow(), thickness));
        Measured buried = flat ? NONE : buried(parts, full, strip, glueOff);
        Optional<Measured> byDiameters = depthFromDiameters(sheet, inputs);
        Optional<Measured> depth =
                pleats.flatMap(section -> inputs.measured(section, "depth")).or(() -> byDiameters);
        Optional<Measured> open = height.map(value -> less(value, buried));
        Optional<Measured> counted = count.isPresent() && depth.isPresent() && height.isPresent()
                ? Optional.of(AreaRoutes.counted(count.get(), depth.get(), glueOff ? open.get() : height.get()))
                : Optional.empty();
        AreaSheet areas = AreaSheet.of(unfolded, counted, stated, full, glueOff ? NONE : buried, name);
        List<Notice> notices = new ArrayList<>(areas.notices());
        if (length.isPresent() && count.isPresent() && byDiameters.isPresent() && thickness.isPresent()) {
            AreaSheet.compareDepths(AreaRoutes.depthFromStrip(length.get(), count.get()), byDiameters.get(), name)
                    .ifPresent(notices::add);
        }
        double shown = length.isPresent() || flat ? 1 : besideSeam(parts, counted.isPresent());
        double gross = areas.gross().value() * shown;
        return new Areas(
                gross,
                areas.effective().value() * shown,
                length.isPresent() ? length.get().value() : gross / full.value(),
                open.orElseGet(() -> glueOff ? full : less(full, buried)).value(),
                notices);
    }

    /** Height of the pleats where neither they nor the strip were measured [m]. */
    private static Measured fullHeight(PartReader parts, Measured stated, Optional<Measured> thickness) {
        double height = new FilterSizes(parts, stated.value(), thickness).elementLength();
        return Measured.exact(Kind.LENGTH, height, Provenance.TYPICAL);
    }

    /** Medium in the glue at each end [m]: read, else as much as was taken off the strip for it, else what is usual. */
    private static Measured buried(PartReader parts, Measured height, Optional<Section> strip, boolean glueOff) {
        Optional<Measured> read =
                parts.section("pleats").flatMap(section -> parts.inputs().measured(section, "buriedPerEnd"));
        if (read.isPresent()) {
            // where nothing was buried, the band of the reading has one side only
            return read.get().value() < 0 ? NONE : read.get();
        }
        double each = glueOff
                ? -sum(strip.orElseThrow(), "width", parts.inputs()) / 2
                : parts.usual(
                        "pleats.buriedPerEnd",
                        TypicalFilter.of("pleats.buriedPerEnd").atMost(MOST_BURIED * height.value()));
        return Measured.exact(Kind.LENGTH, Math.max(0, each), Provenance.TYPICAL);
    }

    /** Share of an area that was not unfolded which the seam leaves, and by how much a count of legs may be off [1]. */
    private static double besideSeam(PartReader parts, boolean counted) {
        double shape = counted
                ? parts.inputs()
                        .derived(
                                parts.sheet().path() + ".pleats.foldShape",
                                Measured.factor(Kind.RATIO, 1, AreaRoutes.FOLD_SHAPE_LN_SIGMA, Provenance.TYPICAL))
                : 1;
        return shape * (1 - parts.usual("pleats.seam"));
    }

    private static double sum(Section strip, String side, Inputs inputs) {
        return strip.sections("allowances").stream()
                .filter(allowance -> allowance.choice("on").orElse("").equals(side))
                .mapToDouble(allowance -> inputs.value(allowance, "by").orElseThrow())
                .sum();
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
