export { findMaterial, infillMaterials } from "./catalogue";
export { type GrainShape, grainShapes, matchGrainShape } from "./grain-shape";
export { explainGrainSize, type GrainSize, type GrainSizeProblem, parseGrainSize } from "./grain-size";
export type { InfillMaterial, InWater, MaterialClass, ShockLayerKind, Sourced, UsualGrain } from "./model";
export { ownMaterialSchema } from "./schema";
export { shockLayerKinds } from "./shock-layers";
export { grainOfMesh, sieveNumbers, sieveOpening } from "./sieve";
export { freshWater } from "./water";
