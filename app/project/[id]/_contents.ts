/** The pages of a project in the order of the job. `decide` is the sentence at the page's top. */
export const contents = [
  {
    slug: "brief",
    title: "Brief",
    decide: "What field is to be built, how much it will be used, and how money over time is counted.",
  },
  {
    slug: "requirements",
    title: "Requirements",
    decide: "What every bid must meet and what counts for how much, set before any bid is read.",
  },
  {
    slug: "specification",
    title: "Specification",
    decide: "What the text asks of every product and firm, whether it is whole and neutral, and who could meet it.",
  },
  {
    slug: "procedure",
    title: "Procedure",
    decide: "How far the project has come, what stands since when, who may do what, and what was amended.",
  },
  {
    slug: "bids",
    title: "Bids",
    decide: "What each bidder claims, exactly as written, by which test method and with what proof.",
  },
  {
    slug: "levelling",
    title: "Levelling",
    decide: "What each price covers, what stands in for the rest, and what the bids come to on one scope.",
  },
  {
    slug: "side-by-side",
    title: "Side by side",
    decide: "Where the bids differ, what they leave out, and which of their figures can be compared at all.",
  },
  {
    slug: "infill",
    title: "Infill and mass",
    decide: "How much infill holds each carpet down, how deep it lies, and how much of it would stay put in water.",
  },
  {
    slug: "hardness",
    title: "Hardness outlook",
    decide: "How hard each surface starts, how hard it may become, and when it could leave the owner’s limits.",
  },
  {
    slug: "cost",
    title: "Life-cycle cost",
    decide: "What each bid costs over the whole study period, not only on the day it is signed.",
  },
  {
    slug: "committee",
    title: "Committee",
    decide: "What evaluators rate, each alone first, how far they agree, and the value they settle on together.",
  },
  {
    slug: "evaluation",
    title: "Evaluation",
    decide: "Which bids pass every gate, how they score on the owner’s own anchors, and how far the order is settled.",
  },
  {
    slug: "recommendation",
    title: "Recommendation",
    decide: "What the figures support, how firm that is, and what to ask before signing.",
  },
  {
    slug: "submittals",
    title: "Submittals",
    decide: "What has to be handed in and is late, and whether what came is what was specified and what was bid.",
  },
  {
    slug: "field-tests",
    title: "Field tests",
    decide: "What the finished field shows, spot by spot and year by year, against what was promised.",
  },
  {
    slug: "promised",
    title: "Promised against measured",
    decide:
      "What was specified, bid, submitted, accepted and measured since, property by property, and where it parts.",
  },
  {
    slug: "attachments",
    title: "Attachments",
    decide: "Which papers the claims rest on, kept as they came, to be opened at the page that is named.",
  },
  {
    slug: "record",
    title: "Record",
    decide: "Who changed what and when, what was refused, and how anybody can check that nothing was left out.",
  },
] as const;

export type PageSlug = (typeof contents)[number]["slug"];

/** A page of the contents with its number, counted from 1. */
export function pageOf(slug: PageSlug) {
  const index = contents.findIndex((page) => page.slug === slug);
  const page = contents[index];
  if (!page) throw new RangeError(`no page ${slug}`);
  return { ...page, number: index + 1 };
}
