package fettle.workshop;

import fettle.engine.control.sweep.SurfaceSweep;

/**
 * A sweep in the book.
 *
 * @param id its number
 * @param sweep the sweep
 */
public record KeptSweep(long id, SurfaceSweep sweep) {}
