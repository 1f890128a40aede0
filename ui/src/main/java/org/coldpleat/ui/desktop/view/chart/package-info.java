/** Charts in the window: pane, reader, numbers behind them, legend. */
package org.coldpleat.ui.desktop.view.chart;
