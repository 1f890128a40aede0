/** The commands that weigh what was measured and plan a test. */
package org.coldpleat.ui.commandline.evidence;
