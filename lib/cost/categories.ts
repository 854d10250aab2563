/** What money is spent for, in the order in which a report lists it. */
export const costCategories = {
  investment: { label: "Investment" },
  "owners-addition": { label: "Owner’s addition to the bid" },
  "operation-and-maintenance": { label: "Operation and maintenance" },
  testing: { label: "Testing" },
  replacement: { label: "Replacement" },
  "removal-and-disposal": { label: "Removal and disposal" },
  residual: { label: "Residual value" },
} as const satisfies Record<string, Readonly<{ label: string }>>;

export type CostCategory = keyof typeof costCategories;
