import { bedDepthOf } from "./component";
import type { InfillComponent } from "./model";
import { type Span, sum } from "./span";

/**
 * Depth in m of components placed one on top of the other: Σ mass per area ÷ loose density.
 * @source derived from the definition of bulk density
 */
export const layeredDepth = (components: readonly InfillComponent[]): Span => sum(components.map(bedDepthOf));
