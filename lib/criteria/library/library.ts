import { cost } from "./cost";
import { footing } from "./footing";
import { health } from "./health";
import { impact } from "./impact";
import { infill } from "./infill";
import type { LibraryEntry } from "./model";
import { warranty } from "./warranty";
import { waterHeat } from "./water-heat";

/** The criteria to start from, in the order of their headings. A new one is an entry in the file of its heading. */
export const library: readonly LibraryEntry[] = [
  ...impact,
  ...footing,
  ...infill,
  ...waterHeat,
  ...health,
  ...warranty,
  ...cost,
];
