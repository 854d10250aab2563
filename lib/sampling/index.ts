export { betaShare, logBetaScale } from "./beta-share";
export {
  distributionInWords,
  distributions,
  meanOf,
  quantileOf,
  statedOf,
  varianceOf,
} from "./distributions";
export { type Drawing, type DrawingProgress, drawnToEnd } from "./drawing";
export {
  type Between,
  type Estimate,
  isEnough,
  meanEstimate,
  quantileInterval,
  type StopAt,
  sampleQuantile,
  samplesForShare,
  shareEstimate,
  shareInterval,
  usualStop,
} from "./estimates";
export { type Generator, generatorFrom } from "./generator";
export type { Distribution, DistributionKind, DistributionTerms, Show } from "./model";
export { namedStream, splitMix64, textHash } from "./named-stream";
export { normalQuantile, normalShare } from "./normal-share";
export { parseDistribution, type ReadFigure, readPlainNumber } from "./parse-distribution";
export { portableExp, portableLog } from "./portable";
export { distributionSchema, type StatedDistribution, seedField } from "./schema";
export { evenWeights, nearbyWeights, orderedWeights, type WeightDraw } from "./simplex";
