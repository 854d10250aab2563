import { type LinkId, linkDefaults, linkIds, technicalLinks } from "#lib/cost";
import type { CostingText } from "#lib/evaluation";

type LinkText = NonNullable<CostingText["links"]>[number];

/** The text of a costing with one setting for each link in each bid, and every parameter, so that all have fields. */
export type OwnersValues = CostingText & {
  links: LinkText[];
  linkParameters: Record<string, string>;
  comparedWith: NonNullable<CostingText["comparedWith"]>;
};

const settingOf = (bid: string, link: LinkId): LinkText => ({ bid, link, choice: { kind: "off" }, own: {} });
const keyOf = ({ bid, link }: Pick<LinkText, "bid" | "link">) => `${bid} ${link}`;

/** Fills in what a costing does not say yet; settings on bids that are gone stay behind the others. */
function ownersValues(
  costing: CostingText,
  { bids, parameters }: Readonly<{ bids: readonly string[]; parameters: Readonly<Record<string, string>> }>,
): OwnersValues {
  const known = new Map((costing.links ?? []).map((setting) => [keyOf(setting), setting]));
  const wanted = linkIds.flatMap((link) => bids.map((bid) => settingOf(bid, link)));
  const places = new Set(wanted.map(keyOf));
  const written = Object.entries(costing.linkParameters ?? {}).filter(([, text]) => text !== null);
  return {
    ...costing,
    links: [
      ...wanted.map((blank) => ({ ...blank, ...known.get(keyOf(blank)) })),
      ...(costing.links ?? []).filter((setting) => !places.has(keyOf(setting))),
    ],
    linkParameters: { ...parameters, ...(Object.fromEntries(written) as Record<string, string>) },
    comparedWith: costing.comparedWith ?? { kind: "nothing" },
  };
}

const everyParameter = Object.fromEntries(
  linkIds.flatMap((link) => technicalLinks[link].parameters.map((parameter) => [parameter, ""] as const)),
);

/** The same with the parameters to start with. */
export const filledOwners = (costing: CostingText, bids: readonly Readonly<{ id: string }>[]): OwnersValues =>
  ownersValues(costing, { bids: bids.map(({ id }) => id), parameters: { ...everyParameter, ...linkDefaults } });
