import type { ActId, RoleId } from "./model";

/** The roles, each with what it is for and what it lets somebody do. The page, the rules and the tests read this table. */
export const roles: Readonly<Record<RoleId, Readonly<{ label: string; explanation: string; acts: readonly ActId[] }>>> =
  {
    administrator: {
      label: "owner’s administrator",
      explanation:
        "Answers for the procedure: lists the people, freezes the criteria, opens prices, records the award.",
      acts: [
        ...(["set-criteria", "freeze-and-amend", "enter-bids", "level-costs"] as const),
        ...(["keep-papers", "list-people", "move-stage", "agree"] as const),
      ],
    },
    architect: {
      label: "architect",
      explanation: "Writes brief, criteria and specification, freezes the criteria, and keeps papers and tests.",
      acts: ["set-criteria", "freeze-and-amend", "enter-bids", "keep-papers"],
    },
    representative: {
      label: "owner’s representative",
      explanation:
        "Enters bids and prices, levels costs, keeps papers and tests, and leads the committee to agreed values.",
      acts: ["enter-bids", "level-costs", "keep-papers", "agree"],
    },
    evaluator: {
      label: "evaluator",
      explanation: "Scores alone first, then agrees with the others on one value.",
      acts: ["score", "agree"],
    },
    reader: {
      label: "reader",
      explanation: "Reads everything that is open, such as a member of the board, and changes nothing.",
      acts: [],
    },
  };

/** What each act is called where it is refused or listed. */
export const actLabels: Readonly<Record<ActId, string>> = {
  "set-criteria": "change the brief, the requirements and the specification",
  "freeze-and-amend": "freeze the criteria and amend them afterwards",
  "enter-bids": "enter bids and their prices",
  "level-costs": "level prices and set the owner’s figures",
  "keep-papers": "keep papers, submittals and field tests, and write the recommendation",
  "list-people": "list people and their roles, and release parts to the public",
  "move-stage": "move the project to its next stage",
  score: "score bids as an evaluator",
  agree: "open the scoresheets and agree on values",
};
