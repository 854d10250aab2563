export type { Release, ReleasePart, ReleaseState } from "./model";
export { releaseParts, releaseState } from "./release";
export { releaseForm, releaseSchema } from "./schema";
