/** The map of the bypass share. */
package org.coldpleat.ui.chart.map;
