import {
  type DimensionName,
  type DisplayUnit,
  type In,
  type Interval,
  measured,
  type SiUnit,
  type UnitOf,
  type UnitSystem,
} from "#lib/quantity";
import type { MethodId } from "../methods";

export const propertyGroups = [
  { id: "carpet", label: "Carpet" },
  { id: "infill", label: "Infill as a whole" },
  { id: "shock-layer", label: "Shock layer" },
  { id: "impact", label: "Impact" },
  { id: "player-surface", label: "Player and surface" },
  { id: "ball", label: "Ball and surface" },
  { id: "water", label: "Water" },
  { id: "heat", label: "Heat" },
  { id: "wear", label: "Wear and life" },
  { id: "health-environment", label: "Health and environment" },
  { id: "warranty", label: "Warranty" },
  { id: "references", label: "References" },
  { id: "delivery", label: "Delivery and laying" },
  { id: "maintenance", label: "Upkeep and stated price" },
] as const;

export type PropertyGroup = (typeof propertyGroups)[number]["id"];

/** A figure outside this band is more likely a slip of unit or digit than a product. Never a limit. In SI. */
export type Plausible<D extends DimensionName = DimensionName> = Interval<SiUnit<D>> & Readonly<{ source: string }>;

export type Choice = Readonly<{ id: string; label: string }>;

type QuantityKinds = {
  [D in DimensionName]: Readonly<{
    kind: "quantity";
    dimension: D;
    plausible: Plausible<D> | null;
    /** The unit that the trade writes for this property where it is not the usual one of the dimension. */
    shownIn?: Readonly<Partial<Record<UnitSystem, DisplayUnit & Readonly<{ unit: UnitOf<D> }>>>>;
  }>;
}[DimensionName];

/** What sort of answer a property takes. */
export type PropertyKind =
  | QuantityKinds
  | Readonly<{ kind: "choice"; choices: readonly Choice[] }>
  | Readonly<{ kind: "words" }>;

/** One thing a bid can claim. */
export type PropertyDefinition = PropertyKind &
  Readonly<{
    id: string;
    group: PropertyGroup;
    /** Noun phrase in sentence case: "Pile height". */
    label: string;
    /** What a buyer would ask, as a plain question. */
    question: string;
    /** Test methods that may stand behind a claim; empty where a document or a count stands behind it. */
    methods: readonly MethodId[];
    /** Why it matters to safety or to the life of the field, one sentence. */
    why: string;
    /** Which way is usually better, as a hint only: the owner's criteria decide. */
    direction: "more" | "less" | "window" | "none";
    /**
     * "missile" where the drop height is the result and not a condition of the test, so that figures compare as soon
     * as the missile is the same. Everywhere else methods compare within one family.
     */
    comparedBy?: "missile";
  }>;

/** A plausible band given in a unit of the trade. */
export const between = <D extends DimensionName>(
  dimension: D,
  low: number,
  high: number,
  unit: UnitOf<D>,
  source = "common practice, no source",
): Plausible<D> => {
  const si = (value: number): In<SiUnit<D>> => measured(dimension, value, unit);
  return { low: si(low), high: si(high), source };
};
