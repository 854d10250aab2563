"use client";
import { useCallback, useState } from "react";
import { RemovedNotice } from "../../../_components/form/removed-notice";

type Removed<T> = Readonly<{ index: number; value: T; words: string }>;

/** Keeps what was taken out of a list, the last first, until it is put back or the page is left. */
export function useUndo<T>(insert: (index: number, value: T) => void) {
  const [removed, setRemoved] = useState<readonly Removed<T>[]>([]);
  const keep = useCallback((entry: Removed<T>) => setRemoved((before) => [entry, ...before]), []);
  const [last] = removed;
  const notice =
    last === undefined ? null : (
      <RemovedNotice
        key={removed.length}
        what={last.words}
        undo={() => {
          insert(last.index, last.value);
          setRemoved((before) => before.slice(1));
        }}
      />
    );
  return { keep, notice };
}
