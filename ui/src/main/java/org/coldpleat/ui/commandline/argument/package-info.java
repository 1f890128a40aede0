/** Arguments that several commands take. */
package org.coldpleat.ui.commandline.argument;
