/** What all charts share: words, units, type and colors, axes, legend and panels. */
package org.coldpleat.ui.chart.style;
