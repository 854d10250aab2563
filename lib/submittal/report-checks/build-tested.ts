import type { ReportCheck } from "./model";

export const buildTested: ReportCheck = {
  id: "build-tested",
  title: "Build tested",
  find: ({ build }) => {
    if (build === "bid-build") return [];
    const sentence =
      build === "other-build"
        ? "The report is of another build than the one bid, so its figures need not hold for it."
        : "The report does not say which build was tested, so it can’t be held against the bid.";
    return [{ severity: "needs an answer", sentence }];
  },
};
