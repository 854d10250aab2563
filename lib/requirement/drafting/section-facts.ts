/** Facts of the brief as people read them; an empty one is a blank of the text. */
export type SectionFacts = Readonly<{
  project: string;
  owner: string;
  /** Size and use: “380 by 212 ft, 80,560 ft²”. */
  field: string;
  hoursOfUse: string;
  climate: string;
  studyPeriod: string;
  discountRate: string;
  baseDate: string;
  costTiming: string;
  testPoints: string;
  /** How the impact level of later years comes about: “worked out for year 8 from …”. */
  outlook: string;
}>;
