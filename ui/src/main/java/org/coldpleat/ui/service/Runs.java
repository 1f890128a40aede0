package org.coldpleat.ui.service;

import java.util.Optional;
import org.coldpleat.model.explain.Explanation;
import org.coldpleat.model.run.Comparison;
import org.coldpleat.model.run.MapResult;
import org.coldpleat.model.run.PointResult;

/** The runs of one opened case; the seam at which a test puts results of its own. */
interface Runs {
    Comparison compare();

    PointResult point(String candidate, String state, double temperature);

    PointResult pointAtFlow(String candidate, double flow, double temperature);

    MapResult map(String candidate);

    Explanation explain(String candidate, Optional<String> state, Optional<String> quantity);
}
