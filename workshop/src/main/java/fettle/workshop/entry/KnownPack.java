package fettle.workshop.entry;

import fettle.engine.pack.Pack;
import fettle.engine.rule.Limits;

/** A registered pack, whether it is out of use, and the limits in force for it. */
public record KnownPack(Pack pack, boolean retired, Limits limits) {}
