/** What all parts of the window share: words, work off its thread, the look of pictures. */
package org.coldpleat.ui.desktop.view.part;
