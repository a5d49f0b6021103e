/** The record: schema, migrations, journal, export and backup. */
package fettle.book;
