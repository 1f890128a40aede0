/** The answer side of the window: runs of the case, tabs, verdict, explanation, what-if, report. */
package org.coldpleat.ui.desktop.view.answer;
