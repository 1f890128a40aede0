/**
 * Home bench tests: raw readings with their uncertainties in, an estimate with standard uncertainty out, with every
 * correction named and sized, and a planner that says beforehand what to expect and what resolution would help. Pure
 * functions of their readings; oil and air properties come in as functions.
 */
package org.coldpleat.model.bench;
