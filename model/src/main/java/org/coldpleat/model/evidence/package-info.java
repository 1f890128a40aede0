/**
 * What is known about the resistance of the medium, from every source at hand, and how it is put together. Knowledge is
 * log-normal: a median and a standard uncertainty of the natural logarithm.
 */
package org.coldpleat.model.evidence;
