/**
 * One set of chart builders for screen, file and report. Builders take plain records and give a chart; {@code ChartFiles}
 * writes it. Nothing here runs the model.
 */
package org.coldpleat.ui.chart;
