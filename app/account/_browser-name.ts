/** A word of the user agent and what it stands for. Many also say what they resemble, so what is more special comes first. */
type Sign = readonly [word: string, name: string];

const browsers: readonly Sign[] = [
  ["Edg/", "Edge"],
  ["OPR/", "Opera"],
  ["Firefox/", "Firefox"],
  ["FxiOS/", "Firefox"],
  ["Chrome/", "Chrome"],
  ["CriOS/", "Chrome"],
  ["Safari/", "Safari"],
];

const systems: readonly Sign[] = [
  ["iPhone", "iPhone"],
  ["iPad", "iPad"],
  ["Android", "Android"],
  ["Windows", "Windows"],
  ["Mac OS X", "macOS"],
  ["Linux", "Linux"],
];

/** A browser by its own word, short enough to be told apart from others in a list. */
export function browserName(agent: string): string {
  const found = [browsers, systems].flatMap((signs) => signs.find(([word]) => agent.includes(word))?.[1] ?? []);
  return found.length === 0 ? "Unknown browser" : found.join(" on ");
}
