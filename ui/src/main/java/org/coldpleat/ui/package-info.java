/** Start of the program, and the packages of its faces. */
package org.coldpleat.ui;
