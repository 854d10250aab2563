import { localEditor } from "#lib/access";

/** Who saved something, in a sentence; whoever gave no name may well be the same person in another tab. */
export const whoSaved = (name: string): string => (name === localEditor.name ? "Another page on this computer" : name);
