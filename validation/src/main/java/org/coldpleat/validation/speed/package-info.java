/** The page of speed: what benchmarks and commands take, in a template that says what is to be measured. */
package org.coldpleat.validation.speed;
