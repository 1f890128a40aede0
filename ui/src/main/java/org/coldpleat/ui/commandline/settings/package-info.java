/** The command that sets valve settings side by side. */
package org.coldpleat.ui.commandline.settings;
