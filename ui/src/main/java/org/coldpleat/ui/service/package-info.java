/**
 * What both faces of the program call: open a case, compare, work out a point or a map, explain. Nothing here prints,
 * formats or knows a window.
 */
package org.coldpleat.ui.service;
