package org.coldpleat.ui.commandline.engine;

import java.util.ArrayList;
import java.util.List;
import org.coldpleat.model.certainty.EngineProfile;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Coverage;
import org.coldpleat.shared.quantity.Kind;
import org.coldpleat.shared.quantity.Measured;
import org.coldpleat.shared.quantity.UnitSystem;
import org.coldpleat.shared.source.Provenance;
import org.coldpleat.ui.commandline.output.PageText;
import org.coldpleat.ui.service.FieldWords;
import org.coldpleat.ui.service.OpenedCase;
import org.coldpleat.ui.text.Figures;
import org.coldpleat.ui.text.ShownUnit;
import org.coldpleat.ui.text.Table;
import org.coldpleat.ui.text.Texts;

/** An engine as a page for a terminal: what stands in, and what to ask the owner. */
final class EngineText {
    private static final String STATES = "engine.states[";

    private final OpenedCase opened;
    private final EngineProfile profile;
    private final UnitSystem units;
    private final PageText page;
    private final List<String> sources = new ArrayList<>();

    private EngineText(OpenedCase opened, EngineProfile profile, UnitSystem units) {
        this.opened = opened;
        this.profile = profile;
        this.units = units;
        page = new PageText(units);
    }

    static String of(OpenedCase opened, EngineProfile profile, UnitSystem units) {
        EngineText text = new EngineText(opened, profile, units);
        text.values();
        text.sources();
        text.questions();
        return text.page.finished();
    }

    private void values() {
        page.paragraph("", Texts.get("engine.head"));
        page.line("");
        Table table = new Table(new int[] {48, 34, 26, 4}, new boolean[] {false, false, false, true})
                .head(
                        Texts.get("engine.column.what"),
                        Texts.get("engine.column.value"),
                        Texts.get("engine.column.sure"),
                        Texts.get("engine.column.source"));
        for (EngineProfile.Value value : profile.values()) {
            table.row(what(value.path()), shown(value.value()), sure(value), source(value));
        }
        page.table(table);
    }

    private String what(String path) {
        if (!path.startsWith(STATES)) {
            return FieldWords.of(path);
        }
        int state = Integer.parseInt(path.substring(STATES.length(), path.indexOf(']')));
        return Texts.get("engine.state", opened.states().get(state));
    }

    /** A value with its 95 % band or interval behind it. */
    private String shown(Measured value) {
        ShownUnit unit = ShownUnit.of(units.unit(value.kind(), value.value()));
        String number = Figures.plain3(unit.of(value.value()));
        String all = value.low() < value.high()
                ? Texts.get(
                        "share.range",
                        number,
                        Figures.plain3(unit.of(value.low())),
                        Figures.plain3(unit.of(value.high())))
                : number;
        return (all + " " + unit.symbol()).strip();
    }

    /** In words how sure a value is. */
    static String sure(EngineProfile.Value value) {
        return Texts.get(
                switch (value.sureness()) {
                    case "a" -> "engine.sure.several";
                    case "b" -> "engine.sure.few";
                    case "c" -> "engine.sure.plausible";
                    case "d" -> "engine.sure.guess";
                    default -> "engine.sure.stated";
                });
    }

    private String source(EngineProfile.Value value) {
        if (value.isStated()) {
            return Figures.NOTHING;
        }
        if (!sources.contains(value.source())) {
            sources.add(value.source());
        }
        return sources.indexOf(value.source()) + 1 + "";
    }

    private void sources() {
        page.section(Texts.get("engine.sources"));
        for (int i = 0; i < sources.size(); i++) {
            page.paragraph(i + 1 + " ", sources.get(i));
        }
    }

    private void questions() {
        page.section(Texts.get("engine.ask"));
        Section filter = opened.sheet(opened.candidates().get(0));
        page.paragraph(
                "",
                Texts.get(
                        "engine.cold",
                        shown(Measured.exact(Kind.TEMPERATURE, profile.temperature(), Provenance.TYPICAL)),
                        profile.state(),
                        shown(filter.section("medium")
                                .orElseThrow()
                                .quantity("statedArea")
                                .orElseThrow()),
                        shown(filter.section("bypass")
                                .orElseThrow()
                                .quantity("openingPressure")
                                .orElseThrow()),
                        Figures.plain3(profile.ratio()),
                        within(profile.lnSigma()),
                        within(profile.engineLnSigma())));
        if (profile.questions().isEmpty()) {
            page.paragraph("", Texts.get("engine.allTold"));
            return;
        }
        page.line("");
        Table table = new Table(new int[] {70, 14, 14}, new boolean[] {false, true, true})
                .head(
                        Texts.get("engine.column.question"),
                        Texts.get("engine.column.share"),
                        Texts.get("engine.column.after"));
        for (EngineProfile.Question question : profile.questions()) {
            table.row(
                    Texts.get("engine.question." + question.about()),
                    Texts.get("engine.percent", Figures.percent(question.share())),
                    within(question.lnSigmaAfter()));
        }
        page.table(table);
        page.paragraph("", Texts.get("engine.shares"));
    }

    private static String within(double lnSigma) {
        return Texts.get("engine.times", Figures.fixed(Math.exp(Coverage.COVERAGE_95 * lnSigma), 1));
    }
}
