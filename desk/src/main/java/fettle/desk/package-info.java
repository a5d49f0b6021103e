/** The web desk. */
package fettle.desk;
