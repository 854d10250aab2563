import { type Span, sumOf } from "#lib/quantity";
import { bedDepthOf } from "./component";
import type { InfillComponent } from "./model";

/**
 * Depth in m of components placed one on top of the other: Σ mass per area ÷ loose density.
 * @source derived from the definition of bulk density
 */
export const layeredDepth = (components: readonly InfillComponent[]): Span => sumOf(components.map(bedDepthOf));
