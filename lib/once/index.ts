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
