"use client";
import { useEffect, useRef } from "react";

/** Says what was done and takes it back. It takes the focus, since the button that was pressed may be gone. */
export function UndoNotice({ said, undo }: { said: React.ReactNode; undo: () => void }) {
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <p className="row" role="status">
      {said}
      <button ref={button} type="button" onClick={undo}>
        Undo
      </button>
    </p>
  );
}
