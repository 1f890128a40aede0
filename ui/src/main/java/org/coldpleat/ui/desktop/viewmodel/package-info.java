/** What the window shows and can do, without any toolkit. */
package org.coldpleat.ui.desktop.viewmodel;
