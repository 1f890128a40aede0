package org.coldpleat.validation.analytic;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.medium.DaviesPermeability;
import org.coldpleat.model.medium.HappelPerpendicularPermeability;
import org.coldpleat.model.medium.KuwabaraPermeability;
import org.coldpleat.validation.TableRows;
import org.coldpleat.validation.checks.ExternalCheck;
import org.coldpleat.validation.checks.Topic;
import org.coldpleat.validation.reference.JacksonJamesPermeability;
import org.coldpleat.validation.reference.KozenyCarmanPermeability;
import org.coldpleat.validation.reference.SpielmanGorenPermeability;
import org.coldpleat.validation.reference.TomadakisRobertsonPermeability;
import org.junit.jupiter.api.Test;

/** The permeability laws against their formulas evaluated independently (derived here). */
class PermeabilityTableTest {
    private static final String SOURCE = "formulas evaluated independently, derived here";

    @Test
    void lawsGiveTheTabulatedValues() {
        Map<String, DoubleUnaryOperator> laws = new LinkedHashMap<>();
        laws.put("davies", DaviesPermeability::normalizedPermeability);
        laws.put("kuwabara", KuwabaraPermeability::normalizedPermeability);
        laws.put("happel_perpendicular", HappelPerpendicularPermeability::normalizedPermeability);
        laws.put("jackson_james", JacksonJamesPermeability::normalizedPermeability);
        laws.put("kozeny_carman", KozenyCarmanPermeability::normalizedPermeability);
        laws.put("tomadakis_robertson", TomadakisRobertsonPermeability::normalizedPermeability);
        laws.put("spielman_goren_isotropic", SpielmanGorenPermeability::normalizedIsotropicPermeability);
        laws.put("spielman_goren", SpielmanGorenPermeability::normalizedPermeability);
        for (Map<String, String> row : TableRows.read(PermeabilityTableTest.class, "permeability_laws.csv")) {
            double solidity = Double.parseDouble(row.get("solidity"));
            laws.forEach((column, law) -> {
                double expected = Double.parseDouble(row.get(column));
                // Five significant digits: half the last one is at most 5e-5 of the value
                check("permeability law: " + column.replace('_', ' '))
                        .at("solidity " + solidity)
                        .expected(expected, "1")
                        .computed(law.applyAsDouble(solidity))
                        .withinRelative(5e-5, "half the last of five digits");
            });
        }
    }

    private static ExternalCheck check(String quantity) {
        return ExternalCheck.of(Topic.MEDIUM, quantity, SOURCE);
    }
}
