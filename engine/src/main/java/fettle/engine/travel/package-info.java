/**
 * Packs by air: the watt-hour rating of each, what a passenger may do with it, what a shipment of it asks for.
 *
 * <p>The rules are tables of data, each rule with its source and date. Rules differ by State, operator and year and an
 * operator may be stricter: nothing here is a clearance, and every answer says so beside the tables' dates. Mobility aids,
 * vehicles and goods for resale are left out.
 */
@NullMarked
package fettle.engine.travel;

import org.jspecify.annotations.NullMarked;
