export {
  type DimensionDefinition,
  type DimensionName,
  type DisplayUnit,
  dimensions,
  type SiUnit,
  type UnitDefinition,
} from "./dimensions";
export type { ExactQuantity, Quantity, Reading } from "./quantity";
export { failed, type Result, succeeded } from "./result";
export type { In, Interval } from "./unit";
