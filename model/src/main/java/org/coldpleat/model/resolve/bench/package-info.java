/** Evaluates the home and bench tests of a sheet. */
package org.coldpleat.model.resolve.bench;
