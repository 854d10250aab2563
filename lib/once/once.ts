/** The same answer to everybody who asks, worked out when the first one does. */
export function onFirstReading<Answer>(answer: () => Answer): () => Answer {
  let kept: Readonly<{ answer: Answer }> | null = null;
  return () => {
    kept ??= { answer: answer() };
    return kept.answer;
  };
}

/** The same function, asked once for each name of a closed list. For pure functions. */
export function oncePerName<Name extends string, Answer>(answer: (name: Name) => Answer): (name: Name) => Answer {
  const kept = new Map<Name, Readonly<{ answer: Answer }>>();
  return (name) => {
    const known = kept.get(name);
    if (known !== undefined) return known.answer;
    const made = { answer: answer(name) };
    kept.set(name, made);
    return made.answer;
  };
}

/**
 * The same function, asked once for each object: its answer is kept for as long as the object lives. For pure functions
 * of things that nobody changes.
 */
export function oncePer<Key extends object, Answer>(answer: (key: Key) => Answer): (key: Key) => Answer {
  const kept = new WeakMap<Key, Readonly<{ answer: Answer }>>();
  return (key) => {
    const known = kept.get(key);
    if (known !== undefined) return known.answer;
    const made = { answer: answer(key) };
    kept.set(key, made);
    return made.answer;
  };
}
