/** Stands wherever impact levels are shown. @source ASTM F1936 and F1292 say that compliance does not imply no injury */
export const impactCaution =
  "A check, not a certification: test the field itself; local codes and licensed practice decide, and no impact level predicts or rules out injury.";
