/** Failed attempts that anybody may make before they have to wait. */
const attemptsAllowed = 5;

const firstWait = 30;
const longestWait = 15 * 60;
/** Seconds after which failed attempts count no more. */
export const attemptsForgottenAfter = 24 * 3600;

/** What is known of attempts that failed: how many, and when the last was, ISO 8601. */
export type Failures = Readonly<{ failures: number; lastAt: string }>;

/**
 * Seconds to wait until the next attempt to sign in is looked at; 0 for none. After five failures half a minute, twice as
 * long after each further one, never more than a quarter of an hour, so that nobody is locked out for good by a
 * stranger's guesses. A day without a failure is forgotten.
 * @param now ISO 8601
 */
export function waitAfter({ failures, lastAt }: Failures, now: string): number {
  const passed = (Date.parse(now) - Date.parse(lastAt)) / 1000;
  if (failures < attemptsAllowed || passed >= attemptsForgottenAfter) return 0;
  const wait = Math.min(longestWait, firstWait * 2 ** (failures - attemptsAllowed));
  // a clock that was set back must lock nobody out until it has caught up
  return passed < 0 ? 0 : Math.max(0, Math.ceil(wait - passed));
}

/** The count after one more failure; it begins anew where the last is long ago. */
export function failedOnceMore(before: Failures | null, now: string): Failures {
  const isOld = before === null || Date.parse(now) - Date.parse(before.lastAt) >= attemptsForgottenAfter * 1000;
  return { failures: isOld ? 1 : before.failures + 1, lastAt: now };
}
