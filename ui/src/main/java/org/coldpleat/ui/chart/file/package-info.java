/** Pictures and the files they are written to. */
package org.coldpleat.ui.chart.file;
