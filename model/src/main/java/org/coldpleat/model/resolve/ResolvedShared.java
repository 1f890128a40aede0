package org.coldpleat.model.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.resolve.engine.EngineBuilder;
import org.coldpleat.model.resolve.engine.OilBuilder;
import org.coldpleat.model.resolve.engine.OilLubricant;
import org.coldpleat.model.resolve.engine.SharedModel;
import org.coldpleat.model.resolve.input.Assumption;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.model.resolve.input.Unknown;
import org.coldpleat.shared.casefile.Section;
import org.coldpleat.shared.quantity.Measured;

/**
 * What all candidates of a case share, in computing form, with the ledger of its build. Immutable, and made from two
 * sections alone: where these say the same in another document, it can stand for that one too.
 */
final class ResolvedShared {
    private final Section oilSection;
    private final Optional<Section> engineSection;
    private final Oil oil;
    private final SharedModel model;
    private final Map<String, Unknown> unknowns;
    private final Map<String, Measured> values;
    private final List<Assumption> assumptions;

    private ResolvedShared(Section oilSection, Optional<Section> engineSection) {
        this.oilSection = oilSection;
        this.engineSection = engineSection;
        Inputs inputs = Inputs.shared();
        oil = OilBuilder.oil(oilSection, inputs);
        model = build(inputs);
        unknowns = inputs.unknowns();
        values = inputs.completed();
        assumptions = inputs.assumptions();
    }

    /**
     * The shared part of a case.
     *
     * @param root top of the document
     * @param before the shared part of another document, taken where it says the same
     */
    static ResolvedShared of(Section root, Optional<ResolvedShared> before) {
        Section oil = root.section("oil").orElseThrow();
        Optional<Section> engine = root.section("engine");
        return before.filter(one -> one.saysOilOf(oil) && Section.saysSame(one.engineSection, engine))
                .orElseGet(() -> new ResolvedShared(oil, engine));
    }

    private boolean saysOilOf(Section other) {
        return oilSection.saysSame(other);
    }

    /** True if two cases have the same oil. */
    boolean hasOilOf(ResolvedShared other) {
        return saysOilOf(other.oilSection);
    }

    private SharedModel build(Inputs inputs) {
        OilLubricant lubricant = new OilLubricant(OilBuilder.shifted(oil, inputs));
        return new SharedModel(
                lubricant, engineSection.map(section -> EngineBuilder.engine(section, lubricant, inputs)));
    }

    /** The model with some unknowns moved: path to value [SI]. */
    SharedModel moving(Map<String, Double> moved) {
        return build(Inputs.shared().movingAgain(moved, values));
    }

    Oil oil() {
        return oil;
    }

    SharedModel model() {
        return model;
    }

    Map<String, Unknown> unknowns() {
        return unknowns;
    }

    List<Assumption> assumptions() {
        return assumptions;
    }
}
