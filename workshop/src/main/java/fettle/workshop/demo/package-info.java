/**
 * An invented model club with eight months of record, for trying Fettle out and for tests.
 *
 * <p>Club, people, craft, packs and readings are all made up; readings lie on Fettle's own default rest-voltage curves,
 * so nothing here can prove a calculation right. The same instant always gives the same record.
 */
@NullMarked
package fettle.workshop.demo;

import org.jspecify.annotations.NullMarked;
