/**
 * From a case document to results: {@code CaseResolver} turns what was written into computing form, {@code Simulation}
 * is the single entry for all runs, and the result records say what came out, with bands, assumptions and notices.
 */
package org.coldpleat.model.run;
