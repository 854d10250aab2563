/** What is stated of a figure, as written, for its one line: how far it may lie off, and what it moves with. */
export function statedInWords(figures: string, driver: string): string {
  const written = figures.trim() === "" ? "no figures yet" : figures.trim();
  return driver.trim() === "" ? written : `${written}, moves with “${driver.trim()}”`;
}
