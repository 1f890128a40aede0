package org.coldpleat.model.steady;

/**
 * Bypass share over oil temperature and pump speed.
 *
 * @param candidate name of the candidate
 * @param setting {@code engine} (speeds) or {@code flowStand} (flows)
 * @param temperature oil temperatures [K], double[nT], coldest first
 * @param drive engine speeds [rev/s] or flows [m3/s], double[nD], smallest first
 * @param share bypass share [1], double[nT][nD]; NaN where there is no converged answer
 */
public record MapResult(String candidate, String setting, double[] temperature, double[] drive, double[][] share) {}
