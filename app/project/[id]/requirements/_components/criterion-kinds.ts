import { type GateKind, gates, startingLevels, type ValueFunctionKind, valueFunctions } from "#lib/criteria";
import type { Choice } from "../../../../_components/form/choice-field";
import type { KindTemplate } from "../../../../_components/form/of-kind";
import { capitalised } from "../../../../_components/in-words";
import type { CriterionText } from "./measure-choices";

export type Kind<K extends string> = K | "none";

const kindsOf = (list: Readonly<Record<string, { label: string }>>) =>
  Object.entries(list).map(([value, { label }]) => ({ value, label: capitalised(label) }));

export const gateChoices = [{ value: "none", label: "No gate" }, ...kindsOf(gates)];
const valueChoices = [{ value: "none", label: "No score" }, ...kindsOf(valueFunctions)];

/** What people rate is scored by their rating alone; what is read off a bid, by any other way. */
export const valueChoicesOf = (isRated: boolean) =>
  valueChoices.filter(({ value }) => (value === "rating") === isRated);

export const limitChoices = kindsOf(gates);

const oneLimit = { limit: "" };

/** The limits of each kind. Those of one name go along when the kind is changed. */
export const limitTemplates: Readonly<Record<GateKind, KindTemplate>> = {
  "at-most": oneLimit,
  "at-least": oneLimit,
  below: oneLimit,
  within: { low: "", high: "" },
};

export const gateTemplates: Readonly<Record<Kind<GateKind>, KindTemplate>> = { none: {}, ...limitTemplates };

export type AskedOfKind = NonNullable<CriterionText["askedOf"]>["kind"];

export const askedOfChoices: readonly (Choice & Readonly<{ value: AskedOfKind }>)[] = [
  { value: "every-bid", label: "Every bid" },
  { value: "bids-where", label: "Only bids of which something else holds" },
];

export const askedOfTemplates: Readonly<Record<AskedOfKind, KindTemplate>> = {
  "every-bid": {},
  "bids-where": { measure: "", is: { kind: "below", ...oneLimit } },
};

/** The anchors of each kind of value function. */
export const valueTemplates: Readonly<Record<Kind<ValueFunctionKind>, KindTemplate>> = {
  none: {},
  "more-is-better": { worst: "", best: "" },
  "less-is-better": { best: "", worst: "" },
  "target-window": { nothingBelow: "", fullFrom: "", fullTo: "", nothingAbove: "" },
  steps: { counted: "from", otherwise: "0", steps: [{ at: "", value: "1" }] },
  piecewise: {
    knots: [
      { at: "", value: "0" },
      { at: "", value: "1" },
    ],
  },
  rating: { levels: startingLevels },
};

type SingleAnchors = Readonly<Record<string, string>>;

/** The anchors that stand as one figure each, in the order in which they are read, with their labels. */
export const anchorLabels = {
  "more-is-better": { worst: "Nothing up to", best: "In full from" },
  "less-is-better": { best: "In full up to", worst: "Nothing from" },
  "target-window": {
    nothingBelow: "Nothing below",
    fullFrom: "In full from",
    fullTo: "In full up to",
    nothingAbove: "Nothing above",
  },
} as const satisfies Readonly<Partial<Record<ValueFunctionKind, SingleAnchors>>>;

/** A gate as typed, in a few words: "at least 1.3 m"; empty without a gate. */
export function gateAsTyped(
  gate: Readonly<{ kind: Kind<GateKind>; limit?: string; low?: string; high?: string }>,
): string {
  switch (gate.kind) {
    case "none":
      return "";
    case "at-most":
    case "at-least":
    case "below":
      return `${gates[gate.kind].label} ${gate.limit ?? ""}`.trim();
    case "within":
      return `${gates.within.label} ${gate.low ?? ""} to ${gate.high ?? ""}`;
  }
}
