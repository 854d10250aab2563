export { type Change, changes, clashes, joined, type Side, type Three } from "./joined";
export { pathIn } from "./path-in";
export { type Put, puts } from "./puts";
export { isQuietKind, isQuietPlace } from "./quiet";
export { isSame } from "./same";
