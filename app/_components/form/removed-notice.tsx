"use client";
import { useEffect, useRef } from "react";

/** Says what was taken away and gives it back. It takes the focus, since the button that was pressed is gone. */
export function RemovedNotice({ what, undo }: { what: string; undo: () => void }) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <p className="row" role="status">
      Removed {what}.
      <button ref={button} type="button" onClick={undo}>
        Undo
      </button>
    </p>
  );
}
