/** Where commands write to and how: console and exit codes, JSON, tables for spreadsheets, pages, pictures. */
package org.coldpleat.ui.commandline.output;
