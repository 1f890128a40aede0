/** Makes a filter from its bench sheet: area, medium, valve and parts. */
package org.coldpleat.model.resolve.candidate;
