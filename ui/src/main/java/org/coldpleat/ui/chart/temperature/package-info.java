/** Charts over oil temperature and the curves in them. */
package org.coldpleat.ui.chart.temperature;
