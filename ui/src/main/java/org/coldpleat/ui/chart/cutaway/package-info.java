/** A filter cut open, drawn to scale from its bench sheet: shapes in millimeters first, then a picture. */
package org.coldpleat.ui.chart.cutaway;
