/** What can be said of a system and a clause in words. */
export const answers = [
  { value: "not-known", label: "Not known" },
  { value: "yes", label: "Yes" },
  { value: "no", label: "No" },
] as const;
