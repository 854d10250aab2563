/** An age in years without more digits than anybody means: 2, 1.5, 1.17. */
export const ageInWords = (years: number): string => String(Number(years.toFixed(2)));
