package org.coldpleat.validation.analytic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.coldpleat.model.medium.DaviesPermeability;
import org.coldpleat.model.medium.HappelPerpendicularPermeability;
import org.coldpleat.model.medium.JacksonJamesPermeability;
import org.coldpleat.model.medium.KozenyCarmanPermeability;
import org.coldpleat.model.medium.KuwabaraPermeability;
import org.coldpleat.model.medium.SpielmanGorenPermeability;
import org.coldpleat.model.medium.TomadakisRobertsonPermeability;
import org.coldpleat.validation.TableRows;
import org.junit.jupiter.api.Test;

/** The permeability laws against their formulas evaluated independently (derived here). */
class PermeabilityTableTest {
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
                assertEquals(expected, law.applyAsDouble(solidity), 5e-5 * expected, column + " at " + solidity);
            });
        }
    }
}
