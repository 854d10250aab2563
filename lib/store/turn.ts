const queues = new Map<string, Promise<unknown>>();

/**
 * Runs jobs with the same key one after the other, in this process. SQLite waits for another connection's lock by
 * blocking the whole process, so two connections of one process to one file would wait for each other in vain.
 */
export function inTurn<T>(key: string, job: () => Promise<T>): Promise<T> {
  const before = queues.get(key) ?? Promise.resolve();
  const mine = before.then(job, job);
  queues.set(key, mine);
  const leave = () => {
    if (queues.get(key) === mine) queues.delete(key);
  };
  mine.then(leave, leave);
  return mine;
}
