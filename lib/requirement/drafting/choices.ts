/** Clauses that the owner switches on or off, with what speaks for each. */
export const sectionChoices = {
  "pre-installation-meeting": {
    label: "Meeting before installation",
    why: "Trades agree on base, edges and lines before anything is covered.",
    usual: true,
  },
  "sample-panel": {
    label: "Sample panel on site",
    why: "Owner and contractor look at one finished piece before the field is filled.",
    usual: false,
  },
  "maintenance-stock": {
    label: "Extra carpet and infill",
    why: "Repairs match only when carpet comes from the same production run.",
    usual: true,
  },
  "owner-engages-laboratory": {
    label: "The owner engages the laboratory for field tests",
    why: "The one who is tested does not choose the tester.",
    usual: true,
  },
  "later-tests": {
    label: "Tests in later years",
    why: "Hardness changes with age, so one test on the first day is not enough.",
    usual: true,
  },
  "insured-warranty": {
    label: "Warranty insured by a third party",
    why: "A promise lasts longer than the firm that gave it.",
    usual: false,
  },
  "depth-grid": {
    label: "Infill depth on a grid",
    why: "Displaced infill makes hard spots that an average hides.",
    usual: true,
  },
  "mass-by-tickets": {
    label: "Infill mass by weigh tickets",
    why: "What was paid for can be held against what was delivered.",
    usual: true,
  },
  "flood-test": {
    label: "Flood test before the carpet is placed",
    why: "A base that does not drain can’t be mended once it is covered.",
    usual: true,
  },
  training: {
    label: "Training of the owner’s staff",
    why: "Most loss of infill is prevented by grooming.",
    usual: true,
  },
  "end-of-life": { label: "Plan for the end of life", why: "Removal is part of the cost of the field.", usual: false },
  "evaluation-appendix": {
    label: "Bid form and evaluation as appendices",
    why: "What counts has to be told before bids are written.",
    usual: true,
  },
} as const;

export type ChoiceId = keyof typeof sectionChoices;
/** What the owner chose; a choice that is not there is as usual. */
export type Choices = Readonly<Partial<Record<ChoiceId, boolean>>>;

export const isChosen = (choices: Choices, id: ChoiceId): boolean => choices[id] ?? sectionChoices[id].usual;
