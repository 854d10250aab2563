/** The same answer to everybody who asks, worked out when the first one does. */
export function onFirstReading<Answer>(answer: () => Answer): () => Answer {
  let kept: Readonly<{ answer: Answer }> | null = null;
  return () => {
    kept ??= { answer: answer() };
    return kept.answer;
  };
}

type Kept<Key, Answer> = Pick<Map<Key, Readonly<{ answer: Answer }>>, "get"> & {
  set: (key: Key, made: Readonly<{ answer: Answer }>) => unknown;
};

const keeping =
  <Key, Answer>(kept: Kept<Key, Answer>, answer: (key: Key) => Answer): ((key: Key) => Answer) =>
  (key) => {
    const known = kept.get(key);
    if (known !== undefined) return known.answer;
    const made = { answer: answer(key) };
    kept.set(key, made);
    return made.answer;
  };

/** The same function, asked once for each name of a closed list. For pure functions. */
export const oncePerName = <Name extends string, Answer>(answer: (name: Name) => Answer): ((name: Name) => Answer) =>
  keeping(new Map(), answer);

/**
 * The same function, asked once for each object: its answer is kept for as long as the object lives. For pure functions
 * of things that nobody changes.
 */
export const oncePer = <Key extends object, Answer>(answer: (key: Key) => Answer): ((key: Key) => Answer) =>
  keeping(new WeakMap(), answer);
