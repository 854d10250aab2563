/** Stands wherever papers are reviewed. @source what a review is: common practice of the trade, no source */
export const reviewCaution =
  "A review looks for general agreement with the contract. It changes no requirement, releases nobody from one and certifies nothing; local codes and licensed practice decide, and the finished field is tested all the same.";
