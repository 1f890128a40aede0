/**
 * Laws that the program does not use and that its own laws are held against: closed forms, other published laws for the same
 * quantity, plain ways of computing it.
 */
package org.coldpleat.validation.reference;
