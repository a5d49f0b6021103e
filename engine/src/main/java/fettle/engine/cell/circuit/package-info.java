/**
 * The equivalent circuit of one cell: rest volts, series resistance, up to two resistor-capacitor pairs, heat.
 *
 * <p>Current is positive when discharging. Charge is a fraction of the cell's own capacity. Resistances are given at 25 °C.
 * Left out: hysteresis, reversible heat, diffusion beyond the second pair.
 */
@NullMarked
package fettle.engine.cell.circuit;

import org.jspecify.annotations.NullMarked;
