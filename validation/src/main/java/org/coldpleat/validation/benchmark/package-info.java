/** Benchmarks, and the plain solvers the fast ones are compared with. */
package org.coldpleat.validation.benchmark;
