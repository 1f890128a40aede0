/** The command that follows a service life. */
package org.coldpleat.ui.commandline.service;
