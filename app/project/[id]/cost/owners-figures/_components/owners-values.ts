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

const everyParameter = Object.fromEntries(
  linkIds.flatMap((link) => technicalLinks[link].parameters.map((parameter) => [parameter, ""] as const)),
);

/** Fills in what a costing does not say yet; settings on bids that are gone stay behind the others. */
export function filledOwners(costing: CostingText, bids: readonly Readonly<{ id: string }>[]): OwnersValues {
  const known = new Map((costing.links ?? []).map((setting) => [keyOf(setting), setting]));
  const wanted = linkIds.flatMap((link) => bids.map(({ id }) => settingOf(id, link)));
  const places = new Set(wanted.map(keyOf));
  const written = Object.entries(costing.linkParameters ?? {}).filter(([, text]) => text !== null);
  return {
    ...costing,
    links: [
      ...wanted.map((blank) => ({ ...blank, ...known.get(keyOf(blank)) })),
      ...(costing.links ?? []).filter((setting) => !places.has(keyOf(setting))),
    ],
    linkParameters: {
      ...everyParameter,
      ...linkDefaults,
      ...(Object.fromEntries(written) as Record<string, string>),
    },
    comparedWith: costing.comparedWith ?? { kind: "nothing" },
  };
}
