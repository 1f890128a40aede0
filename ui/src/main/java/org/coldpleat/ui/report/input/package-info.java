/** What a report is made from, and the runs that give it. */
package org.coldpleat.ui.report.input;
