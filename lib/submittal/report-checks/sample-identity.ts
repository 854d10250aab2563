import type { ReportCheck } from "./model";

/** Letters and digits only: spaces and hyphens are written as people like. */
const plain = (name: string): string => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, "");

export const sampleIdentity: ReportCheck = {
  id: "sample-identity",
  title: "Specimen",
  find: ({ specimen, expectedSpecimen }) => {
    if (plain(specimen) === "")
      return [{ severity: "needs an answer", sentence: "The report does not say which specimen was tested." }];
    if (plain(expectedSpecimen) === "" || plain(specimen) === plain(expectedSpecimen)) return [];
    return [
      {
        severity: "needs an answer",
        sentence: `The report is of “${specimen}”, and “${expectedSpecimen}” was expected.`,
      },
    ];
  },
};
