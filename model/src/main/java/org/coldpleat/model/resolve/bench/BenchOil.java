package org.coldpleat.model.resolve.bench;

import java.util.Optional;
import org.coldpleat.model.flow.Fluid;
import org.coldpleat.model.oil.Oil;
import org.coldpleat.model.oil.OilResolver;
import org.coldpleat.model.resolve.engine.OilBuilder;
import org.coldpleat.model.resolve.engine.OilLubricant;
import org.coldpleat.model.resolve.input.Inputs;
import org.coldpleat.shared.casefile.Section;

/**
 * Oil of the bench tests of a candidate.
 *
 * @param oil on its best curve
 */
public record BenchOil(Oil oil) {
    /** The oil named with the tests, or else that of the case. */
    public static BenchOil of(Optional<Section> tests, Oil ofCase, Inputs inputs) {
        return new BenchOil(tests.flatMap(section -> section.section("oil"))
                .map(section ->
                        OilResolver.resolve(OilBuilder.spec(section, inputs)).orThrow())
                .orElse(ofCase));
    }

    Fluid at(double temperature) {
        return new OilLubricant(oil).at(temperature);
    }

    double lnSigma(double temperature) {
        return oil.viscositySpread(temperature);
    }
}
