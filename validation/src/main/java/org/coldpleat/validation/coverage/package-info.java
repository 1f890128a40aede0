/** Synthetic teardowns with known truth: how often the bands hold it. Run {@link org.coldpleat.validation.coverage.CoverageExperiment}. */
package org.coldpleat.validation.coverage;
