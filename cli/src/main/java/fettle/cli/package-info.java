/** The command line and the assembly of the one runnable jar. */
package fettle.cli;
