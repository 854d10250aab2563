import { compareEditions, methodOf } from "#lib/claim";
import type { ReportCheck } from "./model";

export const methodAndEdition: ReportCheck = {
  id: "method-and-edition",
  title: "Method and edition",
  find: ({ method, edition }, expected) => {
    if (method === null) return [{ severity: "needs an answer", sentence: "The report names no test method." }];
    const { designation, measuresLike } = methodOf(method);
    if (expected.method !== null && methodOf(expected.method).measuresLike !== measuresLike) {
      const wanted = methodOf(expected.method).designation;
      return [
        {
          severity: "needs an answer",
          sentence: `The report is by ${designation}, and the clause asks for ${wanted}. Their figures do not compare.`,
        },
      ];
    }
    if (edition.year === null)
      return [{ severity: "needs an answer", sentence: `The report names no edition of ${designation}.` }];
    const compared = compareEditions(method, expected.edition, edition.year);
    if (compared.kind === "unlike") return [{ severity: "needs an answer", sentence: compared.reason }];
    return compared.kind === "caution" ? [{ severity: "note", sentence: compared.sentence }] : [];
  },
};
