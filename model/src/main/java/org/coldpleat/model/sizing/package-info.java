/**
 * The question turned round: which area, pleat count, medium, valve setting or oil grade just meets a target, on the best
 * estimate and with a stated chance. A target is written in words; a search looks for where it begins to hold.
 */
package org.coldpleat.model.sizing;
