import { evidenceLevels, methodOf, type Property, properties, testMethods } from "#lib/claim";
import { costCategories, costLines } from "#lib/cost";
import { infillMaterials } from "#lib/material";
import { addressOf } from "../workbook/cell";
import type { NamedMaterial } from "./model";
import { biddersRoles, biddersSums } from "./price-columns";
import { listsSheet } from "./sheets";

export const notStated = "not stated";
export const placements = {
  layered: "In layers, one on the other",
  blended: "Mixed with each other",
} as const;

/** The texts that drop-downs offer, each list a column of the sheet of lists; equal lists share one. */
export type Lists = Readonly<{
  columns: readonly (readonly string[])[];
  /** The cells of a list, as a drop-down names them. */
  areaOf: (texts: readonly string[]) => string;
}>;

export const evidenceLabels: readonly string[] = evidenceLevels.map(({ label }) => label);
export const placementLabels: readonly string[] = Object.values(placements);
export const propertyLabels: readonly string[] = properties.map(({ label }) => label);
export const allMethods: readonly string[] = [notStated, ...testMethods.map(({ designation }) => designation)];
export const usualConditions: readonly string[] = [
  "new",
  "year 3",
  "year 5",
  "year 8",
  "after 20,000 cycles",
  "new, 0.5 in less infill",
  notStated,
];
export const kindLabels: readonly string[] = Object.values(costLines).map(({ label }) => label);
/** What the owner adds to a bid is not the bidder's to price. */
export const categoryLabels: readonly string[] = Object.entries(costCategories)
  .filter(([category]) => category !== "owners-addition")
  .map(([, { label }]) => label);

export const roleLabels: readonly string[] = Object.values(biddersRoles).map(({ label }) => label);
export const sumLabels: readonly string[] = Object.values(biddersSums).map(({ label }) => label);

export const materialLabels = (own: readonly NamedMaterial[]): readonly string[] => [
  ...new Set([...own, ...infillMaterials].map(({ label }) => label)),
];

export const methodLabels = ({ methods }: Property): readonly string[] => [
  ...methods.map((method) => methodOf(method).designation),
  notStated,
];

/** All lists of a form, in a settled order. */
export function formLists(own: readonly NamedMaterial[]): Lists {
  const columns: (readonly string[])[] = [];
  const at = new Map<string, number>();
  const add = (texts: readonly string[]) => {
    const key = JSON.stringify(texts);
    if (at.has(key)) return;
    at.set(key, columns.length);
    columns.push(texts);
  };
  for (const list of [evidenceLabels, placementLabels, propertyLabels, allMethods, usualConditions]) add(list);
  for (const list of [roleLabels, kindLabels, categoryLabels, sumLabels, materialLabels(own)]) add(list);
  for (const property of properties) {
    add(methodLabels(property));
    if (property.kind === "choice") add(property.choices.map(({ label }) => label));
  }
  return {
    columns,
    areaOf: (texts) => {
      const index = at.get(JSON.stringify(texts));
      if (index === undefined) throw new RangeError(`no list of ${texts.join(", ")}`);
      const [first, last] = [1, texts.length].map((row) =>
        addressOf(row, index + 1).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2"),
      );
      return `${listsSheet}!${first}:${last}`;
    },
  };
}
