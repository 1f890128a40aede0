/** The answer of a service life and its reasons. */
package org.coldpleat.model.verdict.service;
