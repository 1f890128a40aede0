/** The command that runs a virtual multi-pass test. */
package org.coldpleat.ui.commandline.multipass;
