"use client";
import { UndoNotice } from "./undo-notice";

/** Says what was taken away and gives it back. */
export const RemovedNotice = ({ what, undo }: { what: string; undo: () => void }) => (
  <UndoNotice said={`Removed ${what}.`} undo={undo} />
);
