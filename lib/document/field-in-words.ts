/** The name of a field as a heading: "reportDate" or "report-date" → "Report date". */
export function fieldInWords(field: string): string {
  const words = field.replace(/-/g, " ").replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
}
