/**
 * What technical links start with where a rule of thumb exists. There is none for prices: those are local.
 * @source payload, shares a year and one test visit a year: common practice, no source. Grooming of one hour for ten
 * hours of use: trade interviewees in a school-administration magazine, weak; less for heavy infill: common practice,
 * no source
 */
export const linkDefaults = {
  payload: "22 short tons",
  displacementShare: "2 %",
  carryOffShare: "1 %",
  groomingShareHeavy: "6 %",
  groomingShareOther: "10 %",
  testVisitsPerYear: "1",
} as const;
